package org.cantonment.rules.guest;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;

/**
 * The checks of others that are at hand in this session. One that throws, works too long, takes too much memory, hands back
 * nonsense or answers one question in two ways is named in a finding and not asked again; the others go on. Serves
 * several threads at once.
 */
public final class Guests {

    /** How long a check may work on one list, unless somebody says otherwise. */
    public static final Duration PATIENCE = Duration.ofSeconds(1);

    private final Runner runner;
    private final GuestBook book = new GuestBook();

    /** With the usual patience. */
    public Guests() {
        this(PATIENCE);
    }

    /** @param patience how long one check may work on one list; it may wait three times as long */
    public Guests(Duration patience) {
        this.runner = new Runner(patience);
    }

    /**
     * What one check said of one list.
     *
     * @param use the campaign's line
     * @param findings in order
     */
    public record Said(CheckUse use, KnownCheck check, List<Finding> findings) {

        public Said {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Lets a check in. What it says of itself is heard now, once; one that says it badly is refused and stands among
     * the {@link #refusals}. Of two with one name the one from the earlier {@link Origin} is asked.
     */
    public void enter(RuleCheck check, Origin origin) {
        enter(check, () -> check, origin);
    }

    /**
     * The same for a check that is yet to be made: even its making is foreign code.
     *
     * @param key what {@link #leave} knows it by
     * @param check makes it, once; null if it is gone again
     */
    public void enter(Object key, Supplier<? extends RuleCheck> check, Origin origin) {
        AtomicReference<RuleCheck> made = new AtomicReference<>();
        Call<KnownCheck> hear = stop -> {
            made.set(check.get());
            return made.get() == null ? null : Introduction.hear(made.get(), origin);
        };
        Outcome<KnownCheck> heard = runner.run(List.of(hear), CancelToken.NEVER).get(0);
        if (heard.fault() != null) {
            String who = made.get() == null ? "A check" : "The check of class " + made.get().getClass().getName();
            book.refuse(key, new Refusal(origin, "", who + " of " + origin.words() + ' ' + FaultWords.ended(heard.fault())));
        } else if (heard.value() != null) {
            book.enter(key, new Arrival(made.get(), heard.value()));
        }
    }

    /** Takes a check out again. @param key the check, or what it entered by */
    public void leave(Object key) {
        book.leave(key);
    }

    /** Notes that a whole plug-in could not be let in, until {@link #welcome}. @param why a whole sentence */
    public void refuse(Origin origin, String why) {
        book.refuse(origin, new Refusal(origin, "", why));
    }

    /** Forgets that a plug-in could not be let in. */
    public void welcome(Origin origin) {
        book.leave(origin);
    }

    /** Lets a check that was shut out be asked again. */
    public void forgive(String name) {
        book.forgive(name);
    }

    /** The checks that can be asked for, by name, also those that were shut out. */
    public List<KnownCheck> known() {
        return book.known();
    }

    /** The check of this name. */
    public Optional<KnownCheck> known(String name) {
        return book.find(name).map(Arrival::known);
    }

    /** What was not let in, in order. */
    public List<Refusal> refusals() {
        return book.refusals();
    }

    /** Grows whenever a check comes, goes, is shut out or let in again, so that old answers can be told. */
    public long version() {
        return book.version();
    }

    /**
     * Tells somebody after each change, in the thread that made it.
     *
     * @return to be run when nobody wants to be told any more
     */
    public Runnable onChange(Runnable listener) {
        return book.onChange(listener);
    }

    /**
     * Asks checks about a list as the lines of a campaign wish them asked. A line that does not hold at the list's time, a
     * check that is not at hand or is shut out, and settings that do not fit, say nothing here: {@link #ofLines} does.
     *
     * @throws Cancelled if the circumstances' token says so
     */
    public List<Said> ask(List<CheckUse> uses, Circumstances about) {
        List<Visit> visits = new ArrayList<>();
        Question question = null;
        AnswerReader reader = null;
        for (CheckUse use : uses) {
            Arrival arrival = book.find(use.name()).orElse(null);
            List<Finding> wrong = new ArrayList<>();
            if (arrival != null && arrival.known().shutOut().isEmpty()
                    && use.when().covers(about.ruling().occasion(), about.ruling().eras())) {
                Map<String, SettingValue> settings = SettingsReader.read(use, arrival.known(), wrong);
                if (wrong.isEmpty()) {
                    question = question == null ? Questions.of(about) : question;
                    reader = reader == null ? new AnswerReader(question) : reader;
                    visits.add(new Visit(use, arrival, question, settings, reader));
                }
            }
        }
        return visits.isEmpty() ? List.of() : visit(visits, about);
    }

    private List<Said> visit(List<Visit> visits, Circumstances about) {
        List<Outcome<List<Finding>>> outcomes = runner.run(visits, about.cancel());
        Excusing excusing = new Excusing(about);
        List<Said> all = new ArrayList<>();
        for (int i = 0; i < visits.size(); i++) {
            Visit visit = visits.get(i);
            if (outcomes.get(i).fault() == null) {
                all.add(new Said(visit.use(), visit.arrival().known(),
                        excusing.of(visit.use(), outcomes.get(i).value())));
            } else {
                book.shut(visit.arrival(), outcomes.get(i).fault());
            }
        }
        return List.copyOf(all);
    }

    /** What is to be said at lines of a campaign itself: checks that nobody has, settings that do not fit, misdeeds. */
    public List<Finding> ofLines(List<CheckUse> uses) {
        List<Finding> findings = new ArrayList<>();
        List<Refusal> refusals = book.refusals();
        for (CheckUse use : uses) {
            Optional<Arrival> arrival = book.find(use.name());
            if (arrival.isEmpty()) {
                findings.add(FaultWords.missing(use, book.known(), refusals));
                continue;
            }
            KnownCheck known = arrival.get().known();
            refusals.stream().filter(refusal -> refusal.name().equals(use.name()))
                    .forEach(refusal -> findings.add(FaultWords.refused(use, refusal)));
            if (known.shutOut().isPresent()) {
                findings.add(FaultWords.fault(use, known));
            } else {
                SettingsReader.read(use, known, findings);
            }
        }
        return findings;
    }
}
