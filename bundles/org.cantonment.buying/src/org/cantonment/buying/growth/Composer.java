package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.KeepView;

/**
 * Composes lists for stages. What it composes has passed the same judge as a written list, also as the list after another
 * where the rules ask for continuity; the planner then chooses among them. It composes lists of one formation with its
 * supports, without options, and only so many: that the plan is the best is proven among these, not among all lists there
 * are.
 */
public final class Composer {

    private static final int CANDIDATES = 48;

    private final CancelToken cancel;

    private Composer(CancelToken cancel) {
        this.cancel = cancel;
    }

    /**
     * What was composed.
     *
     * @param targets for each stage a choice of lists
     * @param lists the lists by the ids of their targets
     * @param without the stages for which no legal list was found
     */
    public record Composed(List<Target> targets, Map<Id, ForceList> lists, List<Integer> without) {

        public Composed {
            targets = List.copyOf(targets);
            lists = Map.copyOf(lists);
            without = List.copyOf(without);
        }
    }

    /**
     * Composes lists for these stages, in their order.
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static Composed compose(List<Brief> briefs, CancelToken cancel) {
        return new Composer(cancel).all(briefs);
    }

    private Composed all(List<Brief> briefs) {
        List<Target> targets = new ArrayList<>();
        Map<Id, ForceList> lists = new LinkedHashMap<>();
        List<Integer> without = new ArrayList<>();
        Map<Id, ForceList> before = Map.of();
        for (Brief brief : briefs) {
            Map<Id, ForceList> legal = legal(brief);
            boolean continued = keeps(brief) && !before.isEmpty();
            Map<Id, ForceList> here = new LinkedHashMap<>();
            for (Map.Entry<Id, ForceList> one : legal.entrySet()) {
                Optional<Set<Id>> after = continued ? Optional.of(after(brief, one.getValue(), before)) : Optional.empty();
                if (after.isEmpty() || !after.get().isEmpty()) {
                    targets.add(target(brief, one.getKey(), one.getValue(), after));
                    here.put(one.getKey(), one.getValue());
                }
            }
            if (here.isEmpty()) {
                without.add(brief.stage());
            }
            lists.putAll(here);
            before = here;
        }
        return new Composed(targets, lists, without);
    }

    private static boolean keeps(Brief brief) {
        return brief.ruling().limits().stream().flatMap(limit -> limit.lines().stream()).anyMatch(KeepView.class::isInstance);
    }

    /** Legal lists; where no two need the same pieces, so that a choice is one. */
    private Map<Id, ForceList> legal(Brief brief) {
        Map<Id, ForceList> legal = new LinkedHashMap<>();
        Set<Set<Requirement>> had = new HashSet<>();
        List<Draft> drafts = new Drafter(brief, cancel).drafts();
        Refusals refusals = new Refusals();
        for (Draft draft : drafts) {
            if (legal.size() >= CANDIDATES || refusals.refuses(draft)) {
                continue;
            }
            Id name = brief.name().child("draft-" + (legal.size() + 1));
            ForceList list = draft.list(name, brief);
            Verdict verdict = Judge.judge(brief.ruling(), list, brief.situation().withCancel(cancel));
            if (!verdict.legal()) {
                refusals.learn(draft, verdict);
            } else if (verdict.points() >= brief.least() && had.add(plain(brief, list))) {
                legal.put(name, list);
            }
        }
        return legal;
    }

    private static Set<Requirement> plain(Brief brief, ForceList list) {
        Map<List<Id>, Integer> counts = new LinkedHashMap<>();
        Requirements.of(brief.ruling(), list, Map.of()).forEach(need -> counts.merge(need.anyOf(), need.count(), Integer::sum));
        Set<Requirement> plain = new HashSet<>();
        counts.forEach((anyOf, count) -> plain.add(new Requirement(brief.name(), count, anyOf)));
        return plain;
    }

    /** The lists before that this one may follow. */
    private Set<Id> after(Brief brief, ForceList list, Map<Id, ForceList> before) {
        Set<Id> after = new TreeSet<>();
        before.forEach((id, earlier) -> {
            if (Judge.judge(brief.ruling(), list, brief.situation().withBefore(earlier).withCancel(cancel)).legal()) {
                after.add(id);
            }
        });
        return after;
    }

    private static Target target(Brief brief, Id name, ForceList list, Optional<Set<Id>> after) {
        long points = Judge.judge(brief.ruling(), list, brief.situation()).points();
        return new Target(name, brief.title(), brief.stage(), Requirements.of(brief.ruling(), list, Map.of()),
                brief.allowance()).oneOf(new Target.Choice(brief.name(), (int) points, after));
    }
}
