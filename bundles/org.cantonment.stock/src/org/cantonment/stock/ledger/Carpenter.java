package org.cantonment.stock.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.solve.Covering;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Way;

/** Builds out of a pile's frames, by the fewest that give what is said to have been built. */
final class Carpenter {

    private record Choice(int at, int way) {
    }

    private final Pile pile;
    private final boolean rebuild;
    private final List<Choice> choices = new ArrayList<>();
    private final List<Integer> counts = new ArrayList<>();

    private Carpenter(Pile pile, boolean rebuild) {
        this.pile = pile;
        this.rebuild = rebuild;
        for (int at = 0; at < pile.frames().size(); at++) {
            Frames one = pile.frames().get(at);
            if (one != null && (rebuild || one.built() < 0)) {
                for (int way = 0; way < one.ways().size(); way++) {
                    choices.add(new Choice(at, way));
                }
                counts.add(one.count());
            }
        }
    }

    /** The most of one type that the frames can give, those that can be rebuilt among them. */
    static int most(Pile pile, Id what) {
        return new Carpenter(pile, true).most(what, Integer.MAX_VALUE / 4);
    }

    /**
     * Builds as much of what is wanted as can be.
     *
     * @param rebuild whether what is built already may be taken apart; what comes of it stays together
     * @return how many of each type could not be built
     */
    static Map<Id, Integer> make(Pile pile, Map<Id, Integer> wanted, boolean rebuild) {
        Map<Id, Integer> missing = new LinkedHashMap<>();
        Map<Id, Integer> can = new TreeMap<>();
        Carpenter carpenter = new Carpenter(pile, rebuild);
        wanted.forEach((what, count) -> {
            int got = carpenter.besides(can, what, count);
            if (got > 0) {
                can.put(what, got);
            }
            if (got < count) {
                missing.put(what, count - got);
            }
        });
        if (!can.isEmpty()) {
            carpenter.build(can);
        }
        return missing;
    }

    private int most(Id what, int enough) {
        long most = 0;
        for (Frames one : pile.frames()) {
            if (one != null && (rebuild || one.built() < 0)) {
                most += (long) one.count() * one.ways().stream().mapToInt(way -> way.gives().getOrDefault(what, 0)).max()
                        .orElse(0);
            }
        }
        int high = (int) Math.min(enough, most);
        return pile.caps().isEmpty() ? high : besides(Map.of(), what, high);
    }

    /** So many of it, at most so many as wanted, can be built beside the rest. */
    private int besides(Map<Id, Integer> rest, Id what, int wanted) {
        int low = 0;
        int high = wanted;
        while (low < high) {
            int middle = low + (high - low + 1) / 2;
            Map<Id, Integer> trial = new TreeMap<>(rest);
            trial.put(what, middle);
            if (cover(trial) != null) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private int[] cover(Map<Id, Integer> wanted) {
        List<Id> types = List.copyOf(wanted.keySet());
        Covering.Option[] options = new Covering.Option[choices.size()];
        int group = -1;
        for (int i = 0; i < options.length; i++) {
            Choice choice = choices.get(i);
            group += choice.way() == 0 ? 1 : 0;
            Way way = pile.frames().get(choice.at()).ways().get(choice.way());
            options[i] = new Covering.Option(group,
                    types.stream().mapToInt(type -> way.gives().getOrDefault(type, 0)).toArray(), 0, counts.get(group));
        }
        List<Covering.Limit> limits = new ArrayList<>();
        for (BoxCap cap : pile.caps()) {
            limits.add(new Covering.Limit(cap.most(), choices.stream().mapToInt(choice -> cap.frames().contains(choice.at())
                    ? pile.frames().get(choice.at()).ways().get(choice.way()).gives().entrySet().stream()
                            .filter(one -> cap.of().contains(one.getKey())).mapToInt(Map.Entry::getValue).sum() : 0).toArray()));
        }
        return Covering.of(options, counts.stream().mapToInt(Integer::intValue).toArray(),
                limits.toArray(Covering.Limit[]::new), types.stream().mapToInt(wanted::get).toArray()).built();
    }

    private void build(Map<Id, Integer> wanted) {
        int[] built = cover(wanted);
        Map<Id, Integer> left = new TreeMap<>(wanted);
        for (int i = 0; i < built.length; i++) {
            if (built[i] > 0) {
                Choice choice = choices.get(i);
                Way way = pile.frames().get(choice.at()).ways().get(choice.way());
                int frames = built[i];
                pile.build(choice.at(), choice.way(), frames, left, rebuild);
                way.gives().forEach((type, gives) -> left.computeIfPresent(type,
                        (id, count) -> Math.max(0, count - gives * frames)));
            }
        }
    }
}
