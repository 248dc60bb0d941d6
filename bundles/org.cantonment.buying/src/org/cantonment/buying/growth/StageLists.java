package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.buying.growth.Composer.Miss;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;

/**
 * The legal lists of one stage: drafted, judged, and drafted again with what the refusals taught. Those are kept that the
 * judge has least to say about, and of these the ones with most of what is liked.
 */
final class StageLists {

    private static final int WANTED = 24;
    /** So many that do not go on from the list before are kept beside those that do. */
    private static final int BESIDE = 8;
    private static final int PASSES = 10;
    private static final int TRIES = 900;
    /** After so many refusals it pays to draft anew with what was learned. */
    private static final int PATIENCE = 6;

    /**
     * A legal list.
     *
     * @param points as the judge reckons them
     * @param cautions how many things the judge finds unwise about it
     * @param needs what it needs, as in its brief
     */
    record Legal(Draft draft, ForceList list, long points, int cautions, Map<List<Id>, Integer> needs) {

        /** Whether another one needs as much or more of everything, has no more points,
         *  is no wiser and liked no more. */
        boolean betters(Legal other) {
            return points >= other.points && cautions <= other.cautions && needs.entrySet().stream().allMatch(one ->
                    other.needs.getOrDefault(one.getKey(), 0) >= one.getValue())
                    && (other.draft.load().traits() & ~draft.load().traits()) == 0;
        }
    }

    private final Brief brief;
    private final Guide guide;
    private final boolean last;
    private final CancelToken cancel;
    private final Lessons lessons;
    private final List<Legal> legal = new ArrayList<>();
    private final Set<String> judged = new HashSet<>();
    private long likes;
    private int tried;
    private boolean all;
    private boolean unwished;

    StageLists(Brief brief, Guide guide, boolean last, CancelToken cancel) {
        this.brief = brief;
        this.guide = guide;
        this.last = last;
        this.cancel = cancel;
        lessons = new Lessons(brief);
    }

    /**
     * Looks for lists with what is wished for first; if none is legal, for any.
     *
     * @param starts what lists go on from; if there is nothing, they begin with nothing
     * @param must whether they must go on from it; if not, some are looked for that do not
     */
    void find(List<Draft> starts, Map<Id, Integer> later, boolean must) {
        boolean first = larder(later).asksFirst();
        find(starts, later, first, must);
        if (legal.isEmpty() && first) {
            unwished = true;
            find(starts, later, false, must);
        }
    }

    private void find(List<Draft> starts, Map<Id, Integer> later, boolean first, boolean must) {
        List<Legal> had = List.copyOf(legal);
        if (starts.isEmpty() && !had.isEmpty()) {
            return;
        }
        legal.clear();
        search(starts, later, first);
        if (!starts.isEmpty() && (!must || legal.isEmpty())) {
            List<Legal> following = List.copyOf(legal);
            legal.clear();
            if (had.isEmpty()) {
                search(List.of(), later, first);
                legal.subList(Math.min(following.isEmpty() ? WANTED : BESIDE, legal.size()), legal.size()).clear();
            } else {
                legal.addAll(had);
            }
            legal.addAll(0, following);
        }
    }

    private Larder larder(Map<Id, Integer> later) {
        return new Larder(brief, guide, lessons, last, later);
    }

    private void search(List<Draft> starts, Map<Id, Integer> later, boolean first) {
        boolean learned = true;
        for (int pass = 0; learned && pass < PASSES && wise() < WANTED && tried < TRIES; pass++) {
            Larder larder = larder(later);
            likes = larder.likedTraits();
            Drafter drafter = new Drafter(brief, larder, lessons.cuts(), first, cancel);
            List<Draft> drafts = drafter.drafts(starts);
            learned = false;
            int refused = 0;
            for (int i = 0; i < drafts.size() && legal.size() < 2 * WANTED && wise() < WANTED && tried < TRIES
                    && !(learned && refused >= PATIENCE); i++) {
                if (!lessons.refuses(drafts.get(i)) && judged.add(drafts.get(i).key())) {
                    long before = wise();
                    learned |= judge(drafts.get(i));
                    refused += wise() == before ? 1 : 0;
                }
            }
            all = drafter.complete() && tried < TRIES;
        }
        legal.sort(Comparator.comparingInt(Legal::cautions).thenComparingInt(one -> -liked(one)));
        if (!legal.isEmpty()) {
            Legal foremost = legal.get(0);
            legal.removeIf(one -> liked(one) < liked(foremost));
        }
        legal.subList(Math.min(WANTED, legal.size()), legal.size()).clear();
    }

    private int liked(Legal one) {
        return Long.bitCount(one.draft().load().traits() & likes);
    }

    private long wise() {
        return legal.stream().filter(one -> one.cautions() == 0).count();
    }

    /** Judges a draft; whether its refusal taught anything. */
    private boolean judge(Draft draft) {
        tried++;
        ForceList list = draft.list(brief.name().child("draft-" + tried), brief);
        Verdict verdict = Judge.judge(brief.ruling(), list, brief.situation().withCancel(cancel));
        if (!verdict.legal()) {
            return lessons.learn(draft, verdict);
        }
        if (verdict.points() < brief.least()) {
            return false;
        }
        Map<List<Id>, Integer> needs = new LinkedHashMap<>();
        for (Requirement need : Requirements.of(brief.ruling(), list, Map.of())) {
            needs.merge(need.anyOf(), need.count(), Integer::sum);
        }
        Legal found = new Legal(draft, list, verdict.points(), verdict.findings(Severity.CAUTION).size(), needs);
        if (legal.stream().noneMatch(one -> one.betters(found))) {
            legal.removeIf(found::betters);
            legal.add(found);
        }
        return lessons.learnAdvice(verdict);
    }

    List<Legal> legal() {
        return legal;
    }

    /** Whether nothing that is wished for first is in any legal list. */
    boolean unwished() {
        return unwished;
    }

    /** What the first of the lists needs, by piece types. */
    Map<Id, Integer> needed() {
        Map<Id, Integer> needed = new TreeMap<>();
        if (!legal.isEmpty()) {
            for (Requirement need : Requirements.of(brief.ruling(), legal.get(0).list(), Map.of())) {
                guide.bought(guide.kinds(need.anyOf(), need.unit().orElse(need.entry()), brief.allowance()))
                        .ifPresent(type -> needed.merge(type, need.count(), Integer::sum));
            }
        }
        return needed;
    }

    Miss miss() {
        return new Miss(brief.stage(), tried, all, lessons.reason());
    }
}
