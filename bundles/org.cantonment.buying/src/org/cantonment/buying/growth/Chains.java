package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.buying.growth.StageLists.Legal;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * Which lists may follow which, stage by stage, and with how many cautions. What a rule says of the list before is known only
 * here: so the fewest cautions are sought along the whole way, and not list by list.
 */
final class Chains {

    private static final class Link {
        private final ForceList list;
        private final boolean follows;
        private final Map<Id, Integer> after = new LinkedHashMap<>();
        private int least = Integer.MAX_VALUE;

        Link(ForceList list, boolean follows) {
            this.list = list;
            this.follows = follows;
        }
    }

    private final CancelToken cancel;
    private final List<Map<Id, Link>> stages = new ArrayList<>();

    Chains(CancelToken cancel) {
        this.cancel = cancel;
    }

    /** Adds a stage that is reckoned by itself or after the one before, as its rules ask; after a known list if there is one. */
    void add(Ruling ruling, Situation situation, List<Legal> lists) {
        Map<Id, Link> before = stages.isEmpty() ? Map.of() : stages.get(stages.size() - 1);
        boolean follows = !before.isEmpty() && situation.before().isEmpty() && Continuity.asked(ruling);
        int sofar = before.values().stream().mapToInt(link -> link.least).min().orElse(0);
        Map<Id, Link> here = new LinkedHashMap<>();
        for (Legal one : lists) {
            Link link = new Link(one.list(), follows);
            if (follows) {
                before.forEach((id, earlier) -> after(link, id, earlier, ruling, situation));
            } else {
                link.least = sofar + one.cautions();
            }
            if (link.least < Integer.MAX_VALUE) {
                here.put(one.list().id(), link);
            }
        }
        stages.add(here);
    }

    /** Adds a list that stands whatever comes before it; where it would not be legal after any, that is left aside. */
    void end(Ruling ruling, Situation situation, ForceList list) {
        if (Continuity.asked(ruling)) {
            add(ruling, situation, List.of(new Legal(null, list, 0, 0, Map.of())));
        }
    }

    private void after(Link link, Id id, Link earlier, Ruling ruling, Situation situation) {
        Verdict verdict = Judge.judge(ruling, link.list, situation.withBefore(earlier.list).withCancel(cancel));
        if (verdict.legal()) {
            int cautions = verdict.findings(Severity.CAUTION).size();
            link.after.put(id, cautions);
            link.least = Math.min(link.least, earlier.least + cautions);
        }
    }

    /** For each stage its lists, and for each of them those that it may follow; empty where that is not asked. */
    List<Map<Id, Optional<Set<Id>>>> all() {
        List<Map<Id, Optional<Set<Id>>>> all = new ArrayList<>();
        for (Map<Id, Link> stage : stages) {
            Map<Id, Optional<Set<Id>>> here = new LinkedHashMap<>();
            stage.forEach((id, link) -> here.put(id, link.follows ? Optional.of(link.after.keySet()) : Optional.empty()));
            all.add(here);
        }
        return all;
    }

    /** The same, but only lists, and only one after the other, that have the fewest cautions from the first stage to the last. */
    List<Map<Id, Optional<Set<Id>>>> wisest() {
        List<Map<Id, Optional<Set<Id>>>> wisest = new ArrayList<>(Collections.nCopies(stages.size(), Map.of()));
        Set<Id> wanted = null;
        for (int at = stages.size() - 1; at >= 0; at--) {
            Map<Id, Link> stage = stages.get(at);
            Map<Id, Optional<Set<Id>>> here = new LinkedHashMap<>();
            Set<Id> before = new TreeSet<>();
            boolean follows = false;
            for (Map.Entry<Id, Link> one : stage.entrySet()) {
                if (wanted == null ? one.getValue().least == least(stage) : wanted.contains(one.getKey())) {
                    Optional<Set<Id>> after = one.getValue().follows ? Optional.of(least(one.getValue(), stages.get(at - 1)))
                            : Optional.empty();
                    after.ifPresent(before::addAll);
                    follows |= one.getValue().follows;
                    here.put(one.getKey(), after);
                }
            }
            wisest.set(at, here);
            wanted = follows ? before : null;
        }
        return wisest;
    }

    private static int least(Map<Id, Link> stage) {
        return stage.values().stream().mapToInt(link -> link.least).min().orElse(0);
    }

    private static Set<Id> least(Link link, Map<Id, Link> before) {
        Set<Id> after = new TreeSet<>();
        link.after.forEach((id, cautions) -> {
            if (before.get(id).least + cautions == link.least) {
                after.add(id);
            }
        });
        return after;
    }
}
