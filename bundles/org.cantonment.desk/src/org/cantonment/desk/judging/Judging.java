package org.cantonment.desk.judging;

import java.lang.System.Logger;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Advice;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.change.Mending;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.view.Ruling;

/**
 * Keeps what was judged, and judges again only what something has changed for: the list itself, the rules it is under as
 * they stand at its time, its limit, its player, its player's lists before it. Not for several threads at once.
 */
public final class Judging {
    /** The judge failed on a list, by a fault of the program. */
    public static final String FAILED = "list.failed";

    /** Mends are tried only where there are no more breaches than this, */
    private static final int MOST_BREACHES = 12;
    /** and only so many that all tries together judge no more lines than this, so that no keystroke waits for them. */
    private static final int TRIED_LINES = 800;

    private static final Logger LOG = System.getLogger(Judging.class.getName());

    /**
     * A list and what was said of it.
     *
     * @param about    what it was judged by
     * @param verdict  what the judge said; empty if the list is under no rules, or the judge failed
     * @param findings all that is to be told: what was unclear, then what the judge said
     */
    public record Judged(ListCase about, Optional<Verdict> verdict, List<Finding> findings) {
        public Judged {
            findings = List.copyOf(findings);
        }
    }

    private final Rulings rulings = new Rulings();
    private final Played trials = new Played();
    private final Map<ForceList, Judged> judged = new IdentityHashMap<>();
    private final Map<ForceList, Judged> told = new IdentityHashMap<>();
    private final Asking asking;
    private List<Finding> ofRules = List.of();
    private Meanings last;
    private int count;

    /** @param guests the checks of others that campaigns may turn on */
    public Judging(Guests guests) {
        this.asking = new Asking(guests);
    }

    /**
     * Brings all judgements up to date.
     *
     * @param meanings  what all books mean now
     * @param asked    which lists are to be judged
     * @param books    whether the rule sets are to be looked at in each of their eras, too
     * @param cancel   asked between two lists; what was judged until then is kept
     * @param progress told after each list
     * @throws Cancelled if the token says so
     */
    public void bringUpToDate(Meanings meanings, Predicate<ForceList> asked, boolean books, CancelToken cancel,
            Progress progress) {
        rulings.keepOnly(meanings.ruleSets());
        if (last != null) {
            meanings.takeOver(last);
        }
        Cases cases = new Cases(meanings, rulings);
        Map<ForceList, Judged> kept = new IdentityHashMap<>();
        List<ForceList> lists = meanings.lists();
        int done = 0;
        for (ForceList list : lists) {
            progress.at(done++, lists.size(), "Judging lists:");
            if (asked.test(list)) {
                cancel.check();
                Judged current = current(list, meanings, cases, cancel);
                kept.put(list, current);
                judged.put(list, current);
                asking.ask(current, meanings, cancel);
            }
        }
        judged.keySet().retainAll(kept.keySet());
        asking.keepOnly(kept.keySet());
        // Only now: a check that was shut out on the last list says nothing in the first one either.
        tell(kept);
        last = meanings;
        ofRules = ofRules(meanings, books, cases, kept, cancel);
    }

    /** What was said of a list, found by identity; nothing if it was not asked about. */
    public Optional<Judged> of(ForceList list) {
        return Optional.ofNullable(told.get(list));
    }

    /**
     * What lines of a list's campaign that turn on checks hold against themselves, said in the list instead: for whoever
     * asks about the list alone and does not see the campaign.
     */
    public List<Finding> ofLines(Judged list) {
        return asking.ofLines(list, last).stream().map(finding -> new Finding(finding.code(), finding.severity(),
                list.about().list().id(), Optional.of(finding.at()), finding.message(), List.of())).toList();
    }

    private void tell(Map<ForceList, Judged> kept) {
        Map<ForceList, Judged> before = new IdentityHashMap<>(told);
        told.clear();
        kept.forEach((list, own) -> {
            List<Finding> foreign = asking.of(list);
            List<Finding> all = new ArrayList<>(own.findings());
            all.addAll(foreign);
            Judged now = foreign.isEmpty() ? own : new Judged(own.about(), own.verdict(), all);
            Judged then = before.get(list);
            told.put(list, then != null && then.about() == now.about() && now.equals(then) ? then : now);
        });
    }

    /** What is wrong in the rule sets themselves, at any time that somebody asked about or an era names. */
    public List<Finding> ofRules() {
        return ofRules;
    }

    /** How many lists have been judged since the beginning, each judgement counted. */
    public int judgements() {
        return count;
    }

    private Judged current(ForceList list, Meanings meanings, Cases cases, CancelToken cancel) {
        Judged before = judged.get(list);
        if (before != null && last != null && meanings.sameAround(list, last)) {
            return before;
        }
        ListCase now = cases.of(list);
        return before != null && now.sameAs(before.about()) ? before : judge(now, cancel);
    }

    private Judged judge(ListCase about, CancelToken cancel) {
        count++;
        if (about.ruling().isEmpty()) {
            return new Judged(about, Optional.empty(), about.unclear());
        }
        try {
            Verdict verdict = Judge.judge(about.ruling().get(), about.list(), about.situation().withCancel(cancel));
            List<Finding> all = new ArrayList<>(about.unclear());
            all.addAll(tried(about, verdict, cancel));
            return new Judged(about, Optional.of(verdict), all);
        } catch (Cancelled e) {
            throw e;
        } catch (RuntimeException | StackOverflowError e) {
            LOG.log(Logger.Level.ERROR, "A list could not be judged: " + about.list().id(), e);
            List<Finding> all = new ArrayList<>(about.unclear());
            all.add(Finding.of(FAILED, Severity.BREACH, about.list().id(),
                    "This list could not be judged, by a fault of the program and not of yours."));
            return new Judged(about, Optional.empty(), all);
        }
    }

    // One more judging for each mend that is tried, so the longer the list, the fewer.
    private static List<Finding> tried(ListCase about, Verdict verdict, CancelToken cancel) {
        int breaches = verdict.findings(Severity.BREACH).size();
        int most = TRIED_LINES / Math.max(1, verdict.tally().lines().size());
        if (breaches == 0 || breaches > MOST_BREACHES || most == 0) {
            return verdict.findings();
        }
        List<Finding> plain = verdict.findings();
        List<Finding> refined = new ArrayList<>(Mending.refine(about.ruling().get(), about.list(),
                about.situation().withCancel(cancel), verdict, most));
        // Better one that leads to the next finding than none.
        for (int i = 0; i < refined.size(); i++) {
            refined.set(i, doable(refined.get(i)) ? refined.get(i) : plain.get(i));
        }
        return refined;
    }

    private static boolean doable(Finding finding) {
        return finding.mends().stream().flatMap(mend -> mend.actions().stream())
                .anyMatch(action -> !(action instanceof Advice));
    }

    private List<Finding> ofRules(Meanings meanings, boolean books, Cases cases, Map<ForceList, Judged> kept,
            CancelToken cancel) {
        Set<Ruling> all = new LinkedHashSet<>();
        if (books) {
            meanings.ruleSets().forEach(book -> all.addAll(cases.rulingsOf(book)));
        }
        kept.values().forEach(one -> one.about().ruling().ifPresent(all::add));
        Set<Finding> findings = new TreeSet<>();
        all.forEach(ruling -> findings.addAll(ruling.findings()));
        if (books) {
            trials.keepOnly(meanings.ruleSets());
            meanings.ruleSets().forEach(book -> findings.addAll(trials.of(book, meanings, cancel)));
        }
        findings.addAll(asking.ofLines(meanings.campaigns()));
        if (books && kept.size() == meanings.lists().size()) {
            findings.addAll(Silence.in(meanings.campaigns(), kept.values()));
        }
        return List.copyOf(findings);
    }

    /** Forgets everything, so that the next time all is judged anew. */
    public void forget() {
        judged.clear();
        told.clear();
        asking.keepOnly(Set.of());
        last = null;
        trials.keepOnly(List.of());
        rulings.keepOnly(List.of());
    }
}
