package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Reason.Case;
import org.cantonment.stock.turnout.Reason.InFrames;
import org.cantonment.stock.turnout.Reason.OneMeaning;
import org.cantonment.stock.turnout.Reason.Portion;
import org.cantonment.stock.turnout.Reason.Searched;

/**
 * Says why an instance is short: by blocks as far as the flow is short, and for what is short beyond that by telling
 * meanings apart or by counting frames where that proves it; else by the bound of the search.
 */
final class Explainer {

    private static final int MOST_MEANINGS = 3;

    private final Instance in;
    private final Search.Outcome outcome;

    private Explainer(Instance in, Search.Outcome outcome) {
        this.in = in;
        this.outcome = outcome;
    }

    static List<Reason> reasons(Instance in, Search.Outcome outcome) {
        return in.needed() == outcome.best().filled() ? List.of() : new Explainer(in, outcome).read();
    }

    private List<Reason> read() {
        int lacking = in.needed() - outcome.best().filled();
        Optional<OneMeaning> meaning = outcome.root().filled() > outcome.best().filled() ? oneMeaning(lacking)
                : Optional.empty();
        if (meaning.isPresent()) {
            return List.of(meaning.get());
        }
        List<Reason> reasons = new ArrayList<>(Blocks.of(outcome.root()));
        int beyond = outcome.root().filled() - outcome.best().filled();
        if (beyond > 0) {
            reasons.add(inFrames(beyond).orElseGet(() -> searched(beyond)));
        }
        return reasons;
    }

    private Reason searched(int beyond) {
        return new Searched(needs(), beyond, outcome.root().filled() - outcome.bound(), outcome.steps());
    }

    private List<Requirement> needs() {
        return in.classes().stream().flatMap(one -> one.needs().stream()).toList();
    }

    /** A proof only if every case, by its flow alone, lacks as much as the best turnout does. */
    private Optional<OneMeaning> oneMeaning(int lacking) {
        List<Integer> types = List.copyOf(outcome.meanings());
        if (types.isEmpty() || types.size() > MOST_MEANINGS) {
            return Optional.empty();
        }
        List<Case> cases = new ArrayList<>();
        for (int choice = 0; choice < 1 << types.size(); choice++) {
            State state = State.root(in);
            Map<Id, Boolean> itself = new TreeMap<>();
            for (int i = 0; i < types.size(); i++) {
                boolean others = (choice >> i & 1) == 1;
                state.mode[types.get(i)] = others ? State.OTHERS : State.ITSELF;
                itself.put(in.types().get(types.get(i)), !others);
            }
            Case one = new Case(itself, Blocks.of(Network.of(in, state, false)));
            if (one.lacking() < lacking) {
                return Optional.empty();
            }
            cases.add(one);
        }
        return Optional.of(new OneMeaning(needs(), cases, lacking));
    }

    private Optional<Reason> inFrames(int beyond) {
        for (int l = 0; l < in.lumps().size(); l++) {
            Optional<InFrames> found = portions(l).filter(one -> one.framesNeeded() > one.frames())
                    .filter(one -> outcome.bound() == outcome.best().filled())
                    .map(one -> new InFrames(one.part(), one.frames(), one.portions(), beyond));
            if (found.isPresent()) {
                return Optional.of(found.get());
            }
        }
        return Optional.empty();
    }

    /** The needs in groups that share no types, with the frames of this lump that each takes; none if a frame serves two. */
    private Optional<InFrames> portions(int l) {
        Lump lump = in.lumps().get(l);
        int[] groupOfType = groups();
        List<Portion> portions = new ArrayList<>();
        boolean[] serves = new boolean[lump.ways()];
        for (int group : inOrder(groupOfType)) {
            int[] each = new int[lump.ways()];
            for (int w = 0; w < each.length; w++) {
                int[] gives = lump.gives()[w];
                for (int t = 0; t < gives.length; t++) {
                    each[w] += groupOfType[t] == group ? gives[t] : 0;
                }
            }
            int most = Arrays.stream(each).max().orElse(0);
            long pieces = wanted(groupOfType, group) - otherwise(groupOfType, group, l);
            if (most > 0 && pieces > 0) {
                for (int w = 0; w < each.length; w++) {
                    if (each[w] > 0 && serves[w]) {
                        return Optional.empty();
                    }
                    serves[w] |= each[w] > 0;
                }
                portions.add(new Portion(needs(groupOfType, group), (int) pieces, most, (int) ((pieces + most - 1) / most)));
            }
        }
        return Optional.of(new InFrames(lump.frames().part(), lump.frames().count(), portions, 0));
    }

    /** The groups in the order of their first needs. */
    private Set<Integer> inOrder(int[] groupOfType) {
        Set<Integer> order = new LinkedHashSet<>();
        for (int c = 0; c < in.classes().size(); c++) {
            types(c).stream().limit(1).forEach(type -> order.add(groupOfType[type]));
        }
        return order;
    }

    /** For each type a number that types which may fill one need have in common. */
    private int[] groups() {
        int[] group = new int[in.types().size()];
        Arrays.setAll(group, t -> t);
        for (int c = 0; c < in.classes().size(); c++) {
            List<Integer> types = types(c);
            for (int type : types) {
                int from = group[type];
                int to = group[types.get(0)];
                Arrays.setAll(group, t -> group[t] == from ? to : group[t]);
            }
        }
        return group;
    }

    private List<Integer> types(int one) {
        List<Integer> types = new ArrayList<>();
        for (int type : in.direct()[one].types()) {
            types.add(type);
        }
        in.hubs().stream().filter(hub -> Arrays.stream(hub.classes()).anyMatch(c -> c == one))
                .forEach(hub -> Arrays.stream(hub.types()).forEach(types::add));
        return types;
    }

    private List<Requirement> needs(int[] groupOfType, int group) {
        List<Requirement> needs = new ArrayList<>();
        for (int c = 0; c < in.classes().size(); c++) {
            if (belongs(c, groupOfType, group)) {
                needs.addAll(in.classes().get(c).needs());
            }
        }
        return needs;
    }

    private boolean belongs(int one, int[] groupOfType, int group) {
        List<Integer> types = types(one);
        return !types.isEmpty() && groupOfType[types.get(0)] == group;
    }

    private long wanted(int[] groupOfType, int group) {
        long wanted = 0;
        for (int c = 0; c < in.classes().size(); c++) {
            wanted += belongs(c, groupOfType, group) ? in.classes().get(c).count() : 0;
        }
        return wanted;
    }

    /** The most that can come from anywhere but these frames. */
    private long otherwise(int[] groupOfType, int group, int l) {
        State root = State.root(in);
        long sum = 0;
        for (int t = 0; t < groupOfType.length; t++) {
            sum += groupOfType[t] == group ? (long) in.known()[t] + in.guessed()[t] : 0;
        }
        for (Lump lump : in.lumps()) {
            int[] weights = new int[lump.ways()];
            for (int w = 0; w < weights.length; w++) {
                for (int t = 0; t < groupOfType.length; t++) {
                    weights[w] += groupOfType[t] == group ? lump.gives()[w][t] : 0;
                }
            }
            sum += lump == in.lumps().get(l) ? 0 : root.most(lump, weights);
        }
        for (Instance.Turn turn : in.turns()) {
            sum += groupOfType[turn.to()] == group ? (long) turn.most() * turn.conversion().gives() : 0;
        }
        return sum;
    }
}
