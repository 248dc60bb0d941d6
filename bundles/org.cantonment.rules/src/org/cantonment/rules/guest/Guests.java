package org.cantonment.rules.guest;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.QuestionBuilder;
import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.muster.TallyLine;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * The checks of others that are at hand in this session. One that throws, takes too long or hands back nonsense yields a
 * finding that names it, and is not asked again. Serves several threads at once.
 */
public final class Guests {

    private static final long GLANCE = Duration.ofMillis(20).toNanos();

    private final Map<String, RuleCheck> checks = new ConcurrentHashMap<>();
    private final Map<String, String> shutOut = new ConcurrentHashMap<>();
    private final Duration patience;

    /** @param patience how long one check may work on one list */
    public Guests(Duration patience) {
        this.patience = patience;
    }

    /**
     * Lets a check in, in place of an earlier one of its name. A name that was shut out stays shut out.
     *
     * @return a sentence that says what is wrong with the check, if it was not let in
     */
    public Optional<String> enter(RuleCheck check) {
        String wrong;
        try {
            wrong = Introduction.fault(check);
            if (wrong == null) {
                checks.put(check.name(), check);
            }
        } catch (RuntimeException | LinkageError fault) {
            wrong = "A check of class " + check.getClass().getName() + " fails when asked who it is: " + fault;
        }
        return Optional.ofNullable(wrong);
    }

    /** Takes a check out again. */
    public void leave(RuleCheck check) {
        checks.values().removeIf(known -> known == check);
    }

    /** The checks at hand, by name, also those that were shut out. */
    public Map<String, RuleCheck> checks() {
        return Map.copyOf(checks);
    }

    /** Names that are no longer asked. */
    public Set<String> shutOut() {
        return Set.copyOf(shutOut.keySet());
    }

    /**
     * Asks one check as a campaign wishes it asked. A check whose time does not cover the ruling's occasion is silent; one
     * that is not at hand, and settings that do not fit, are findings at the campaign's line.
     *
     * @throws Cancelled if the situation's token says so
     */
    public List<Finding> ask(CheckUse use, List<RuleSet> books, Ruling ruling, ForceList list, Situation situation,
            Verdict verdict) {
        if (!use.when().covers(ruling.occasion(), ruling.eras())) {
            return List.of();
        }
        RuleCheck check = checks.get(use.name());
        if (check == null) {
            return List.of(Finding.of("check.missing", Severity.CAUTION, use.id(), "No plug-in here gives the check "
                    + use.name() + "; it was not made."));
        }
        if (shutOut.containsKey(use.name())) {
            return List.of(fault(use, shutOut.get(use.name())));
        }
        List<Finding> wrong = new ArrayList<>();
        Map<String, SettingValue> settings = new SettingsReader(use).read(check.parameters(), wrong);
        if (!wrong.isEmpty()) {
            return wrong;
        }
        Map<Id, Long> points = new HashMap<>();
        for (TallyLine line : verdict.tally().lines()) {
            points.put(line.entry(), line.points());
        }
        verdict.contingents().forEach(tally -> tally.lines().forEach(line -> points.put(line.entry(), line.points())));
        QuestionBuilder question = Question.about(list).under(books).at(ruling.occasion()).to(situation.points())
                .costs(verdict.points(), points).until(situation.cancel());
        settings.forEach(question::with);
        return visit(use, check, question.ask());
    }

    private List<Finding> visit(CheckUse use, RuleCheck check, Question question) {
        FutureTask<List<Finding>> visit = new FutureTask<>(() -> check.check(question));
        Thread thread = new Thread(visit, "check " + use.name());
        thread.setDaemon(true);
        thread.start();
        try {
            return new AnswerReader(use, question.list()).read(await(visit, question.cancel()));
        } catch (TimeoutException slow) {
            visit.cancel(true);
            return shut(use, "took longer than " + patience.toMillis() + " ms");
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Cancelled && question.cancel().cancelled()) {
                throw new Cancelled();
            }
            return shut(use, "failed: " + failed.getCause());
        } catch (InterruptedException stopped) {
            visit.cancel(true);
            Thread.currentThread().interrupt();
            throw new Cancelled();
        } catch (Nonsense nonsense) {
            return shut(use, nonsense.getMessage());
        }
    }

    /** Waits for the answer, and now and then asks whether it is still wanted. */
    private List<Finding> await(FutureTask<List<Finding>> visit, CancelToken cancel)
            throws InterruptedException, ExecutionException, TimeoutException {
        long end = System.nanoTime() + patience.toNanos();
        while (true) {
            long left = end - System.nanoTime();
            try {
                return visit.get(Math.min(Math.max(1, left), GLANCE), TimeUnit.NANOSECONDS);
            } catch (TimeoutException still) {
                if (cancel.cancelled()) {
                    visit.cancel(true);
                    throw new Cancelled();
                }
                if (left <= GLANCE) {
                    throw still;
                }
            }
        }
    }

    private List<Finding> shut(CheckUse use, String how) {
        shutOut.putIfAbsent(use.name(), how);
        return List.of(fault(use, how));
    }

    private static Finding fault(CheckUse use, String how) {
        String end = how.endsWith(".") ? "" : ".";
        return Finding.of("check.fault", Severity.CAUTION, use.id(), "The check " + use.name() + ' ' + how + end
                + " It is not asked again before the next start; this list was not checked by it.");
    }
}
