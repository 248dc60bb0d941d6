package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Advice;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.check.MendLabels;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** Tries every mend that a verdict proposes, and keeps those that truly mend. */
public final class Mending {

    private final Ruling ruling;
    private final ForceList list;
    private final Situation situation;
    private final Map<String, Integer> before;
    private final int breaches;
    private int left;

    /** A mend that was tried, and the breaches that are left after it. */
    private record Tried(Mend mend, int breaches) {
    }

    private Mending(Ruling ruling, ForceList list, Situation situation, Verdict verdict, int most) {
        this.ruling = ruling;
        this.list = list;
        this.situation = situation;
        this.before = count(verdict);
        this.breaches = verdict.findings(Severity.BREACH).size();
        this.left = most;
    }

    /**
     * The verdict's findings with their mends tried: a mend that does not rid the list of its breach, or brings a new one,
     * is left out; one that mends more than its own says so; those that leave the fewest breaches come first. Words that
     * no change stands behind are kept, last. Cautions and notes are handed on as they are.
     *
     * @param most how many mends to try; each costs one judging, and those beyond are kept untried
     * @throws org.cantonment.domain.common.Cancelled if the situation's token says so
     */
    public static List<Finding> refine(Ruling ruling, ForceList list, Situation situation, Verdict verdict, int most) {
        Mending mending = new Mending(ruling, list, situation, verdict, most);
        List<Finding> refined = new ArrayList<>();
        for (Finding finding : verdict.findings()) {
            refined.add(finding.severity() == Severity.BREACH ? finding.withMends(mending.mends(finding)) : finding);
        }
        return List.copyOf(refined);
    }

    private List<Mend> mends(Finding finding) {
        List<Tried> good = new ArrayList<>();
        List<Mend> words = new ArrayList<>();
        for (Mend mend : finding.mends()) {
            if (left <= 0 || mend.actions().stream().allMatch(Advice.class::isInstance)) {
                words.add(mend);
            } else {
                left--;
                attempt(finding, mend, good);
            }
        }
        good.sort(Comparator.comparingInt(Tried::breaches));
        List<Mend> mends = new ArrayList<>();
        for (Tried tried : good) {
            mends.add(named(tried));
        }
        mends.addAll(words);
        return mends;
    }

    private void attempt(Finding finding, Mend mend, List<Tried> good) {
        Verdict after = Judge.bare(ruling, ListEdits.apply(list, mend.actions()), situation);
        Map<String, Integer> then = count(after);
        boolean worse = then.entrySet().stream().anyMatch(each -> each.getValue() > before.getOrDefault(each.getKey(), 0));
        if (!worse && then.getOrDefault(key(finding), 0) < before.get(key(finding))) {
            good.add(new Tried(mend, after.findings(Severity.BREACH).size()));
        }
    }

    private Mend named(Tried tried) {
        int mended = breaches - tried.breaches();
        String all = mended < 2 ? "" : "mends " + mended + " findings";
        return new Mend(MendLabels.with(tried.mend().label(), all), tried.mend().actions());
    }

    private static Map<String, Integer> count(Verdict verdict) {
        Map<String, Integer> counts = new HashMap<>();
        for (Finding finding : verdict.findings(Severity.BREACH)) {
            counts.merge(key(finding), 1, Integer::sum);
        }
        return counts;
    }

    private static String key(Finding finding) {
        return finding.code() + ' ' + finding.rule().map(Id::text).orElse("");
    }
}
