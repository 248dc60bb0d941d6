package org.cantonment.stock.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * The fewest frames whose handfuls cover a demand, within bounds for each way of building, the number of frames of each
 * group, and caps. Exact up to a number of steps; beyond it, says that it does not know.
 */
public final class Covering {

    /**
     * One way of building, of the frames of one group; the ways of a group stand together.
     *
     * @param group the number of its group
     * @param gives how many of each type a frame so built gives
     * @param low so many frames at least are built so
     * @param high so many at most
     */
    public record Option(int group, int[] gives, int low, int high) {
    }

    /** Of all that is built, at most so many together, counted with these weights for each option. */
    public record Limit(int most, int[] weights) {
    }

    private static final int STEPS = 200_000;
    private static final int NEVER = Integer.MAX_VALUE / 2;

    private final Option[] options;
    private final int[] frames;
    private final Limit[] limits;
    private final int types;
    private final Map<String, Integer> best = new HashMap<>();
    private final Map<String, Integer> choice = new HashMap<>();
    private final long[][] reach;
    private int steps;

    private Covering(Option[] options, int[] frames, Limit[] limits, int types) {
        this.options = options;
        this.frames = frames;
        this.limits = limits;
        this.types = types;
        reach = new long[options.length + 1][types];
        for (int i = options.length - 1; i >= 0; i--) {
            for (int t = 0; t < types; t++) {
                reach[i][t] = reach[i + 1][t] + (long) options[i].high() * options[i].gives()[t];
            }
        }
    }

    /** What came of it: the frames for each option; null where there are none, or where it was not decided. */
    public record Result(int[] built, boolean decided) {
    }

    /** @param frames how many frames each group has */
    public static Result of(Option[] options, int[] frames, Limit[] limits, int[] demand) {
        Covering covering = new Covering(options, frames, limits, demand.length);
        int[] room = new int[limits.length];
        for (int c = 0; c < room.length; c++) {
            room[c] = limits[c].most();
        }
        int left = options.length == 0 ? 0 : frames[options[0].group()];
        int least = covering.least(0, left, demand.clone(), room);
        if (covering.steps > STEPS) {
            return new Result(null, false);
        }
        return new Result(least >= NEVER ? null : covering.read(demand.clone(), room), true);
    }

    private int least(int at, int left, int[] demand, int[] room) {
        for (int t = 0; t < types; t++) {
            if (demand[t] > reach[at][t]) {
                return NEVER;
            }
        }
        if (at == options.length) {
            return 0;
        }
        String key = key(at, left, demand, room);
        Integer known = best.get(key);
        if (known != null) {
            return known;
        }
        int least = NEVER;
        int chosen = -1;
        int most = most(at, left, demand, room);
        for (int y = options[at].low(); y <= most && ++steps <= STEPS; y++) {
            int[] further = demand.clone();
            int[] rest = room.clone();
            apply(at, y, further, rest);
            int sum = y + least(at + 1, leftAfter(at, left - y), further, rest);
            if (sum < least) {
                least = sum;
                chosen = y;
            }
        }
        best.put(key, least);
        choice.put(key, chosen);
        return least;
    }

    /** Beyond what the demand asks for, a frame more is of no use. */
    private int most(int at, int left, int[] demand, int[] room) {
        Option option = options[at];
        int useful = option.low();
        for (int t = 0; t < types; t++) {
            if (option.gives()[t] > 0) {
                useful = Math.max(useful, (demand[t] + option.gives()[t] - 1) / option.gives()[t]);
            }
        }
        int most = Math.min(Math.min(option.high(), left), useful);
        for (int c = 0; c < limits.length; c++) {
            if (limits[c].weights()[at] > 0) {
                most = Math.min(most, room[c] / limits[c].weights()[at]);
            }
        }
        return most;
    }

    private void apply(int at, int y, int[] demand, int[] room) {
        for (int t = 0; t < types; t++) {
            demand[t] = (int) Math.max(0, demand[t] - (long) y * options[at].gives()[t]);
        }
        for (int c = 0; c < limits.length; c++) {
            room[c] -= y * limits[c].weights()[at];
        }
    }

    private int leftAfter(int at, int left) {
        if (at + 1 == options.length || options[at + 1].group() == options[at].group()) {
            return left;
        }
        return frames[options[at + 1].group()];
    }

    private int[] read(int[] demand, int[] room) {
        int[] built = new int[options.length];
        int left = options.length == 0 ? 0 : frames[options[0].group()];
        for (int at = 0; at < options.length; at++) {
            built[at] = choice.get(key(at, left, demand, room));
            apply(at, built[at], demand, room);
            left = leftAfter(at, left - built[at]);
        }
        return built;
    }

    private static String key(int at, int left, int[] demand, int[] room) {
        return at + "/" + left + Arrays.toString(demand) + Arrays.toString(room);
    }
}
