package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

import org.cantonment.desk.judging.Cases;
import org.cantonment.desk.judging.ListCase;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.judging.Others;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.change.Answer;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.view.Ruling;

/**
 * How one list stands in every era of its rules.
 *
 * @param list    the list
 * @param title   what people call it
 * @param owned   whose shelf it was reckoned with
 * @param unasked why checks of others that its campaign turns on could not be asked, as whole sentences
 * @param eras    one for each era, in the order in which the rules write them
 */
public record ListEras(ForceList list, String title, Owned owned, List<String> unasked, List<EraAnswer> eras) {

    /** How many lists are looked at where checks of others have refused the least change. */
    private static final int MOST_ASKED = 5_000;

    /** A list cannot be looked at by era; the message is a whole sentence for a person. */
    public static final class Unclear extends Exception {
        private static final long serialVersionUID = 1L;

        Unclear(String message) {
            super(message);
        }
    }

    public ListEras {
        unasked = List.copyOf(unasked);
        eras = List.copyOf(eras);
    }

    /** The era that the list is written for, if it says so. */
    public Optional<EraAnswer> written() {
        return eras.stream().filter(EraAnswer::written).findFirst();
    }

    /**
     * Asks.
     *
     * @param meanings what all books mean
     * @param guests   the checks of others that campaigns may turn on
     * @param list     one of their lists
     * @param owned    what there is to field it with
     * @param next     how many changes to look for beyond the least, from 0
     * @param cancel   asked often
     * @param progress told of each era
     * @throws Unclear   if nobody says which rules the list is under, or they know no eras
     * @throws Cancelled if the token says so
     */
    public static ListEras of(Meanings meanings, Guests guests, ForceList list, Owned owned, int next,
            CancelToken cancel, Progress progress) throws Unclear {
        Cases cases = Cases.of(meanings);
        ListCase own = cases.of(list);
        if (own.ruling().isEmpty()) {
            throw new Unclear(own.unclear().get(own.unclear().size() - 1).message());
        }
        List<Id> eras = cases.erasOf(list);
        if (eras.isEmpty()) {
            throw new Unclear("The rules of this list know no eras.");
        }
        Cupboard cupboard = owned.known() ? new Cupboard(meanings, owned.shelves(), cases.booksOf(list),
                list.player().flatMap(meanings::campaignOf)) : null;
        Others others = new Others(guests, meanings);
        Set<String> unasked = new LinkedHashSet<>();
        List<EraAnswer> answers = new ArrayList<>();
        for (Id era : eras) {
            cancel.check();
            progress.at(answers.size(), eras.size(), "Looking into eras:");
            boolean written = own.occasion().era().equals(Optional.of(era));
            ListCase there = cases.in(list, era);
            Look look = new Look(own.ruling().get(), there.ruling().orElseThrow(), there, list, cupboard, next + 1,
                    after -> cases.in(after, era), others, cancel);
            answers.add(look.answer(era, meanings.eraTitle(era), written));
            others.ofLines(there).forEach(finding -> unasked.add(finding.message()));
        }
        return new ListEras(list, ListTitle.of(list, meanings), owned, List.copyOf(unasked), answers);
    }

    /** One list in one era. */
    private record Look(Ruling before, Ruling now, ListCase about, ForceList list, Cupboard cupboard, int wanted,
            Function<ForceList, ListCase> cases, Others others, CancelToken cancel) {

        EraAnswer answer(Id era, String title, boolean written) {
            Verdict verdict = Judge.judge(now, list, about.situation().withCancel(cancel));
            List<Objection> objections = objections(about, verdict);
            boolean legal = verdict.legal() && objections.isEmpty();
            Optional<Changes> atLarge = legal ? Optional.empty() : search(Fielding.ALL, verdict.legal());
            Optional<Changes> mine = Optional.ofNullable(cupboard).map(one -> one.fielding(now, cancel))
                    .flatMap(fielding -> legal && !lacks(fielding) ? Optional.empty()
                            : search(fielding, verdict.legal() && !lacks(fielding)));
            return new EraAnswer(era, title, written, about.situation().points(), verdict, objections, atLarge, mine);
        }

        private List<Objection> objections(ListCase some, Verdict verdict) {
            return Objection.in(others.of(some, verdict, cancel));
        }

        private boolean lacks(Fielding fielding) {
            return !fielding.lacking(Requirements.of(now, list, about.situation().contingents())).isEmpty();
        }

        /**
         * What contents the rules and the checks of others; where nothing was found that contents these, what contents the
         * rules.
         *
         * @param lawful whether the list as it is contents the rules, so that there is nothing to change for them
         */
        private Optional<Changes> search(Fielding fielding, boolean lawful) {
            Changes byRules = lawful ? null : changes(fielding, any -> true, LeastChange.MOST);
            if (byRules != null && byRules.best().filter(best -> !best.legal()).isEmpty()) {
                return Optional.of(byRules);
            }
            Changes agreed = changes(fielding, answer -> objections(answer).isEmpty(), MOST_ASKED);
            return agreed.best().isPresent() ? Optional.of(agreed) : Optional.ofNullable(byRules);
        }

        private Changes changes(Fielding fielding, Predicate<Answer> agreed, int most) {
            Found found = LeastChange.search(now, before, list, about.situation().withCancel(cancel), fielding, agreed,
                    wanted, most);
            return new Changes(found.answers().stream().map(this::told).toList(), found.complete(), found.bound());
        }

        private ChangeAnswer told(Answer answer) {
            return new ChangeAnswer(Difference.between(list, answer.after(), before, now), answer.moved(), answer.units(),
                    answer.after(), answer.verdict(), objections(answer));
        }

        private List<Objection> objections(Answer answer) {
            return objections(cases.apply(answer.after()), answer.verdict());
        }
    }
}
