package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cantonment.buying.growth.StageLists.Legal;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

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
     * @param targets for each stage a choice of lists: those that can be had with the fewest cautions over all stages
     * @param more the same with lists that there are more cautions about
     * @param lists the lists by the ids of their targets
     * @param misses the stages for which no legal list was found, and why
     * @param unwished the stages in which no list is legal that has what is wished for first
     */
    public record Composed(List<Target> targets, List<Target> more, Map<Id, ForceList> lists, List<Miss> misses, List<Integer> unwished) {

        public Composed {
            targets = List.copyOf(targets);
            more = List.copyOf(more);
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

    /** A list that stands after the last stage, and what it is judged by: those before should let it be legal. */
    public record Next(Ruling ruling, Situation situation, ForceList list) {
    }

    /**
     * Composes lists for these stages, in their order. One goes on from the list before that its situation tells, else from
     * those of the stage before.
     *
     * @param next a list that stands already after the last stage
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static Composed compose(List<Brief> briefs, Optional<Next> next, Guide guide, CancelToken cancel, Progress progress) {
        return new Composer(guide, cancel, progress).all(briefs, next);
    }

    private Composed all(List<Brief> briefs, Optional<Next> next) {
        boolean continued = IntStream.range(0, briefs.size()).anyMatch(at -> follows(briefs, at)) || next.isPresent()
                && Continuity.asked(next.get().ruling());
        List<StageLists> stages = new ArrayList<>(Collections.nCopies(briefs.size(), null));
        Map<Id, Integer> later = new TreeMap<>();
        if (continued && briefs.size() > 1) {
            StageLists last = lists(briefs, briefs.size() - 1);
            last.find(List.of(), later, false);
            last.needed().forEach(later::put);
            stages.set(briefs.size() - 1, last);
        }
        List<ForceList> before = List.of();
        for (int i = 0; i < stages.size(); i++) {
            progress.at(i + 1, stages.size(), "Composing lists");
            int at = continued ? i : stages.size() - 1 - i;
            StageLists stage = stages.get(at) == null ? lists(briefs, at) : stages.get(at);
            before = briefs.get(at).situation().before().map(List::of).orElse(before);
            stage.find(follows(briefs, at) ? new Continuity(briefs.get(at)).starts(before, cancel) : List.of(), later,
                    Continuity.must(briefs.get(at).ruling()));
            before = stage.legal().stream().map(Legal::list).toList();
            if (!continued) {
                stage.needed().forEach((type, count) -> later.merge(type, count, Math::max));
            }
            stages.set(at, stage);
        }
        return together(briefs, stages, next);
    }

    private StageLists lists(List<Brief> briefs, int at) {
        return new StageLists(briefs.get(at), guide, at == briefs.size() - 1, cancel);
    }

    private static boolean follows(List<Brief> briefs, int at) {
        return (at > 0 || briefs.get(at).situation().before().isPresent()) && Continuity.asked(briefs.get(at).ruling());
    }

    private Composed together(List<Brief> briefs, List<StageLists> stages, Optional<Next> next) {
        Chains chains = new Chains(cancel);
        for (int i = 0; i < stages.size(); i++) {
            chains.add(briefs.get(i).ruling(), briefs.get(i).situation(), stages.get(i).legal());
        }
        next.ifPresent(one -> chains.end(one.ruling(), one.situation(), one.list()));
        List<Map<Id, Optional<Set<Id>>>> all = chains.all();
        List<Map<Id, Optional<Set<Id>>>> wisest = chains.wisest();
        List<Target> targets = new ArrayList<>();
        List<Target> more = new ArrayList<>();
        Map<Id, ForceList> lists = new LinkedHashMap<>();
        List<Miss> misses = new ArrayList<>();
        List<Integer> unwished = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            for (Legal one : stages.get(i).legal()) {
                Id id = one.list().id();
                if (all.get(i).containsKey(id)) {
                    Target target = target(briefs.get(i), one);
                    more.add(choice(target, briefs.get(i), one, all.get(i).get(id)));
                    lists.put(id, one.list());
                    if (wisest.get(i).containsKey(id)) {
                        targets.add(choice(target, briefs.get(i), one, wisest.get(i).get(id)));
                    }
                }
            }
            if (all.get(i).isEmpty()) {
                misses.add(stages.get(i).miss());
            } else if (stages.get(i).unwished()) {
                unwished.add(briefs.get(i).stage());
            }
        }
        return new Composed(targets, more, lists, misses, unwished);
    }

    private static Target target(Brief brief, Legal one) {
        return new Target(one.list().id(), brief.title(), brief.stage(), Requirements.of(brief.ruling(), one.list(), Map.of()),
                brief.allowance());
    }

    private static Target choice(Target target, Brief brief, Legal one, Optional<Set<Id>> after) {
        return target.oneOf(new Target.Choice(brief.name(), (int) one.points(), after));
    }
}
