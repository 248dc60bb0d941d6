package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Accepted;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.likeness.StandIn;
import org.cantonment.stock.likeness.Truth;

/** What one target needs, in groups. */
final class Wants {

    private final Target target;
    private final List<NeedGroup> groups = new ArrayList<>();
    private final List<Conversion> conversions = new ArrayList<>();
    private final Map<Accepted, NeedGroup> byAccepted = new HashMap<>();
    private final Catalogue catalogue;

    Wants(Catalogue catalogue, Target target, Shares shares) {
        this.catalogue = catalogue;
        this.target = target;
        int person = target.person();
        target.allowance().conversions().forEach(turn -> conversions.add(shares.of(turn, person)));
        Map<Accepted, Integer> counts = new LinkedHashMap<>();
        for (Requirement need : target.needs()) {
            if (counts(need)) {
                counts.merge(accepted(need), need.count(), Integer::sum);
            }
        }
        List<StandIn> lines = target.allowance().standIns();
        counts.forEach((accepted, count) -> byAccepted.put(accepted, group(accepted, count, lines, shares)));
        counts.keySet().forEach(accepted -> groups.add(byAccepted.get(accepted)));
        groups.sort(Comparator.comparing(group -> group.free().toString()));
    }

    private boolean counts(Requirement need) {
        return need.count() > 0 && need.anyOf().stream().noneMatch(catalogue::isItem);
    }

    private Accepted accepted(Requirement need) {
        return target.allowance().accepted(catalogue, need.anyOf(), need.unit());
    }

    /** The group that a need is in; empty if it counts for nothing here. */
    Optional<NeedGroup> group(Requirement need) {
        return counts(need) ? Optional.of(byAccepted.get(accepted(need))) : Optional.empty();
    }

    private NeedGroup group(Accepted accepted, int count, List<StandIn> lines, Shares shares) {
        int person = target.person();
        Set<Id> exact = new TreeSet<>();
        accepted.types().forEach((type, truth) -> {
            if (truth == Truth.EXACT) {
                exact.add(type);
            }
        });
        Set<Id> free = new TreeSet<>(accepted.types().keySet());
        Map<Integer, Set<Id>> shared = new TreeMap<>();
        accepted.standIns().forEach((line, types) -> {
            if (lines.get(line).percent().isEmpty()) {
                free.addAll(types);
            } else {
                shared.put(line, shares.of(types, person));
            }
        });
        return new NeedGroup(count, shares.of(exact, person), shares.of(free, person), shared);
    }

    Target target() {
        return target;
    }

    List<NeedGroup> groups() {
        return groups;
    }

    /** What may be worked over. */
    List<Conversion> conversions() {
        return conversions;
    }

    /** Every type that may stand anywhere, with what conversions take for it. */
    Set<Id> types() {
        Set<Id> types = new TreeSet<>();
        for (NeedGroup group : groups) {
            types.addAll(group.free());
            group.shared().values().forEach(types::addAll);
        }
        conversions.stream().filter(one -> types.contains(one.to()))
                .forEach(one -> types.addAll(one.from().keySet()));
        return types;
    }
}
