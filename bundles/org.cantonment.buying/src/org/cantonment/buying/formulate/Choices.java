package org.cantonment.buying.formulate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.buying.plan.Target;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.Id;

/** Columns for which target of a choice stands. */
final class Choices {

    /** The targets of one choice in one stage. */
    record Key(int person, int stage, Id of) {
    }

    private final List<Target> targets;
    private final int[] columns;
    private final Map<Key, Integer> most = new LinkedHashMap<>();

    Choices(List<Target> targets, ProgrammeMaker maker) {
        this.targets = targets;
        columns = new int[targets.size()];
        Map<Key, Sum> chosen = new LinkedHashMap<>();
        Map<Id, Integer> byId = new LinkedHashMap<>();
        for (int t = 0; t < columns.length; t++) {
            Optional<Target.Choice> choice = targets.get(t).choice();
            columns[t] = choice.isEmpty() ? Formulation.NONE : maker.column(targets.get(t).id() + " stands", 0, 0, 1, 0);
            if (choice.isPresent()) {
                chosen.computeIfAbsent(key(t), key -> new Sum()).add(1, columns[t]);
                most.merge(key(t), choice.get().points(), Math::max);
                byId.put(targets.get(t).id(), columns[t]);
            }
        }
        chosen.values().forEach(sum -> {
            maker.atLeast(sum, 1);
            maker.atMost(sum, 1);
        });
        for (int t = 0; t < columns.length; t++) {
            if (columns[t] != Formulation.NONE && targets.get(t).choice().get().after().isPresent()) {
                Sum follows = new Sum().add(-1, columns[t]);
                targets.get(t).choice().get().after().get().stream().filter(byId::containsKey).sorted()
                        .forEach(before -> follows.add(1, byId.get(before)));
                maker.atLeast(follows, 0);
            }
        }
    }

    /** Which choice a target belongs to. */
    Key key(int target) {
        Target one = targets.get(target);
        return new Key(one.person(), one.stage(), one.choice().orElseThrow().of());
    }

    /** The column of a target; {@link Formulation#NONE} if it must stand. */
    int column(int target) {
        return columns[target];
    }

    /** Whether a target stands. */
    boolean stands(long[] values, int target) {
        return columns[target] == Formulation.NONE || values[columns[target]] > 0;
    }

    /** What each target of a choice uses less than the one that uses most, by column. */
    void weigh(long[] unused) {
        for (int t = 0; t < columns.length; t++) {
            if (columns[t] != Formulation.NONE) {
                unused[columns[t]] = most.get(key(t)) - targets.get(t).choice().get().points();
            }
        }
    }
}
