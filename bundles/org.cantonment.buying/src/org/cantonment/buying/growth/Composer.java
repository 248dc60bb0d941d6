package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.growth.StageLists.Legal;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;

/**
 * Composes lists for stages. What it composes has passed the same judge as a written list, also as the list after another
 * where the rules ask for continuity; the planner then chooses among them. It composes only so many: that the plan is the
 * best is proven among these, not among all lists there are.
 */
public final class Composer {

    private final Guide guide;
    private final CancelToken cancel;
    private final Progress progress;

    private Composer(Guide guide, CancelToken cancel, Progress progress) {
        this.guide = guide;
        this.cancel = cancel;
        this.progress = progress;
    }

    /**
     * What was composed.
     *
     * @param targets for each stage a choice of lists
     * @param lists the lists by the ids of their targets
     * @param misses the stages for which no legal list was found, and why
     * @param unwished the stages in which no list is legal that has what is wished for first
     */
    public record Composed(List<Target> targets, Map<Id, ForceList> lists, List<Miss> misses, List<Integer> unwished) {

        public Composed {
            targets = List.copyOf(targets);
            lists = Map.copyOf(lists);
            misses = List.copyOf(misses);
            unwished = List.copyOf(unwished);
        }

        /** The stages for which no legal list was found. */
        public List<Integer> without() {
            return misses.stream().map(Miss::stage).toList();
        }
    }

    /**
     * A stage for which no legal list was found.
     *
     * @param tried how many were judged
     * @param proven whether none that can be put together here is legal
     * @param reason the rule that stood in the way most often
     */
    public record Miss(int stage, int tried, boolean proven, Optional<String> reason) {
    }

    /**
     * Composes lists for these stages, in their order.
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static Composed compose(List<Brief> briefs, Guide guide, CancelToken cancel, Progress progress) {
        return new Composer(guide, cancel, progress).all(briefs);
    }

    private Composed all(List<Brief> briefs) {
        boolean continued = briefs.stream().skip(1).anyMatch(brief -> Continuity.asked(brief.ruling()));
        List<StageLists> stages = new ArrayList<>(Collections.nCopies(briefs.size(), null));
        Map<Id, Integer> later = new TreeMap<>();
        List<Draft> before = List.of();
        for (int i = 0; i < stages.size(); i++) {
            progress.at(i + 1, stages.size(), "Composing lists");
            int at = continued ? i : stages.size() - 1 - i;
            StageLists stage = new StageLists(briefs.get(at), guide, at == stages.size() - 1, cancel);
            boolean follows = at > 0 && Continuity.asked(briefs.get(at).ruling());
            stage.find(follows ? new Continuity(briefs.get(at)).starts(before) : List.of(), later);
            before = stage.legal().stream().map(Legal::draft).toList();
            if (!continued) {
                stage.needed().forEach((type, count) -> later.merge(type, count, Math::max));
            }
            stages.set(at, stage);
        }
        return together(briefs, stages);
    }

    private Composed together(List<Brief> briefs, List<StageLists> stages) {
        List<Target> targets = new ArrayList<>();
        Map<Id, ForceList> lists = new LinkedHashMap<>();
        List<Miss> misses = new ArrayList<>();
        List<Integer> unwished = new ArrayList<>();
        Map<Id, ForceList> before = Map.of();
        for (int i = 0; i < stages.size(); i++) {
            Brief brief = briefs.get(i);
            boolean follows = !before.isEmpty() && Continuity.asked(brief.ruling());
            Map<Id, ForceList> here = new LinkedHashMap<>();
            for (Legal one : stages.get(i).legal()) {
                Optional<Set<Id>> after = follows ? Optional.of(after(brief, one.list(), before)) : Optional.empty();
                if (after.isEmpty() || !after.get().isEmpty()) {
                    targets.add(new Target(one.list().id(), brief.title(), brief.stage(),
                            Requirements.of(brief.ruling(), one.list(), Map.of()), brief.allowance())
                                    .oneOf(new Target.Choice(brief.name(), (int) one.points(), after)));
                    here.put(one.list().id(), one.list());
                }
            }
            if (here.isEmpty()) {
                misses.add(stages.get(i).miss());
            } else if (stages.get(i).unwished()) {
                unwished.add(brief.stage());
            }
            lists.putAll(here);
            before = here;
        }
        return new Composed(targets, lists, misses, unwished);
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
}
