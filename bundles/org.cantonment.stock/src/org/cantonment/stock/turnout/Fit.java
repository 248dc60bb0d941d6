package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cantonment.stock.solve.Covering;
import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Instance.Room;

/** Whether the pieces that a flow draws from frames can be built, and how; frames that share a cap are asked together. */
final class Fit {

    private final Instance in;
    private final List<List<Integer>> groups = new ArrayList<>();

    Fit(Instance in) {
        this.in = in;
        int[] root = new int[in.lumps().size()];
        Arrays.setAll(root, i -> i);
        for (Room room : in.rooms()) {
            for (int l : room.lumps()) {
                int from = root[l];
                int to = root[room.lumps().get(0)];
                Arrays.setAll(root, i -> root[i] == from ? to : root[i]);
            }
        }
        for (int l = 0; l < root.length; l++) {
            int leader = root[l];
            List<Integer> group = groups.stream().filter(one -> root[one.get(0)] == leader).findFirst().orElse(null);
            if (group == null) {
                group = new ArrayList<>();
                groups.add(group);
            }
            group.add(l);
        }
    }

    /** What can be built. */
    record Built(int[] ways, List<Integer> stuck) {
    }

    /** The frames for each way; or the lumps of the first group whose pieces cannot be built, or not surely. */
    Built of(Network network) {
        int[] ways = new int[in.ways()];
        for (List<Integer> group : groups) {
            if (!build(network, group, ways)) {
                return new Built(null, group);
            }
        }
        return new Built(ways, List.of());
    }

    private boolean build(Network network, List<Integer> group, int[] ways) {
        int types = in.types().size();
        List<Integer> places = new ArrayList<>();
        for (int g = 0; g < group.size(); g++) {
            for (int t : in.lumps().get(group.get(g)).types()) {
                if (network.drawn(group.get(g), t) > 0) {
                    places.add(g * types + t);
                }
            }
        }
        int[] demand = places.stream().mapToInt(at -> network.drawn(group.get(at / types), at % types)).toArray();
        List<Covering.Option> options = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        for (int g = 0; g < group.size(); g++) {
            Lump lump = in.lumps().get(group.get(g));
            int own = g;
            for (int w = 0; w < lump.ways(); w++) {
                int[] gives = lump.gives()[w];
                numbers.add(lump.from() + w);
                options.add(new Covering.Option(g,
                        places.stream().mapToInt(at -> at / types == own ? gives[at % types] : 0).toArray(),
                        network.state().low[lump.from() + w], network.state().high[lump.from() + w]));
            }
        }
        Covering.Result result = Covering.of(options.toArray(Covering.Option[]::new),
                group.stream().mapToInt(l -> in.lumps().get(l).frames().count()).toArray(), limits(group, numbers), demand);
        for (int i = 0; result.built() != null && i < numbers.size(); i++) {
            ways[numbers.get(i)] = result.built()[i];
        }
        return result.built() != null;
    }

    private Covering.Limit[] limits(List<Integer> group, List<Integer> numbers) {
        return in.rooms().stream().filter(room -> group.contains(room.lumps().get(0)))
                .map(room -> new Covering.Limit(room.most(),
                        numbers.stream().mapToInt(number -> room.weights()[number]).toArray()))
                .toArray(Covering.Limit[]::new);
    }
}
