package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Clauses;
import org.cantonment.domain.campaign.Exchange;
import org.cantonment.domain.campaign.ForMoney;
import org.cantonment.domain.campaign.ForNothing;
import org.cantonment.domain.campaign.ForThings;
import org.cantonment.domain.campaign.ResultState;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.Source;
import org.cantonment.model.campaign.AgainClause;
import org.cantonment.model.campaign.AtClause;
import org.cantonment.model.campaign.BecauseClause;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Clause;
import org.cantonment.model.campaign.ForClause;
import org.cantonment.model.campaign.FromClause;
import org.cantonment.model.campaign.KnownClause;
import org.cantonment.model.campaign.LateClause;
import org.cantonment.model.campaign.OnClause;
import org.cantonment.model.campaign.RoundClause;
import org.cantonment.model.campaign.SessionClause;
import org.cantonment.model.campaign.StateClause;
import org.cantonment.model.campaign.UntilClause;
import org.cantonment.model.range.Range;
import org.cantonment.model.range.RangePackage;
import org.cantonment.model.range.Seller;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What was said beside one deed, as it comes in. */
final class ClauseReader {

    private final Reading reading;
    private final Phrases phrases;
    private final Said<Exchange> exchange;
    private final Said<Source> from;
    private final Said<LocalDate> on;
    private final Said<LocalDate> known;
    private final Said<Id> at;
    private final Said<Integer> until;
    private final Said<Integer> round;
    private final Said<Id> session;
    private final Said<ResultState> state;
    private final Said<String> because;
    private boolean again;
    private boolean late;

    private ClauseReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
        exchange = new Said<>(reading);
        from = new Said<>(reading);
        on = new Said<>(reading);
        known = new Said<>(reading);
        at = new Said<>(reading);
        until = new Said<>(reading);
        round = new Said<>(reading);
        session = new Said<>(reading);
        state = new Said<>(reading);
        because = new Said<>(reading);
    }

    static Clauses read(Reading reading, Phrases phrases, List<Clause> clauses) {
        if (clauses.isEmpty()) {
            return Clauses.NONE;
        }
        ClauseReader reader = new ClauseReader(reading, priced(phrases, clauses));
        clauses.forEach(reader::take);
        return new Clauses(reader.exchange.value(), reader.from.value(), reader.on.value(), reader.known.value(),
                reader.at.value(), Said.number(reader.until), Said.number(reader.round), reader.session.value(),
                reader.state.value(), reader.again, reader.late, reader.because.value());
    }

    /** What is bought from a seller is paid in the seller's currency, unless another is said. */
    private static Phrases priced(Phrases phrases, List<Clause> clauses) {
        for (Clause clause : clauses) {
            if (clause instanceof FromClause from
                    && Sources.named(from, from.getSource()).orElse(null) instanceof Seller seller) {
                EObject book = EcoreUtil.getRootContainer(seller);
                String code = seller.getCurrency() != null ? seller.getCurrency()
                        : book instanceof Range range ? range.getCurrency() : null;
                boolean sound = code != null && Amounts.currency(code).isPresent();
                return sound ? phrases.in(seller, RangePackage.Literals.SELLER__CURRENCY, code) : phrases;
            }
        }
        return phrases;
    }

    private void take(Clause clause) {
        if (clause instanceof ForClause given) {
            exchange.say(given, exchange(given));
        } else if (clause instanceof FromClause source) {
            from.say(source, Sources.read(source, source.getText(), source.getSource()));
        } else if (clause instanceof AtClause place) {
            at.say(place, Reading.ref(place.getPlace()));
        } else if (clause instanceof SessionClause evening) {
            session.say(evening, Reading.ref(evening.getSession()));
        } else if (clause instanceof StateClause firm) {
            state.say(firm, Words.of(ResultState.class, firm.getState()));
        } else if (clause instanceof BecauseClause reason) {
            because.say(reason, Optional.ofNullable(reason.getText()));
        } else if (clause instanceof AgainClause) {
            again = true;
        } else if (clause instanceof LateClause) {
            late = true;
        } else {
            time(clause);
        }
    }

    private void time(Clause clause) {
        if (clause instanceof OnClause day) {
            on.say(day, phrases.date(day, CampaignPackage.Literals.ON_CLAUSE__DATE, day.getDate()));
        } else if (clause instanceof KnownClause day) {
            known.say(day, phrases.date(day, CampaignPackage.Literals.KNOWN_CLAUSE__DATE, day.getDate()));
        } else if (clause instanceof UntilClause week) {
            until.say(week, Optional.ofNullable(week.getWeek()).map(
                    number -> reading.atLeastOne(week, CampaignPackage.Literals.UNTIL_CLAUSE__WEEK, number)));
        } else if (clause instanceof RoundClause of) {
            round.say(of, Optional.ofNullable(of.getRound()).map(
                    number -> reading.atLeastOne(of, CampaignPackage.Literals.ROUND_CLAUSE__ROUND, number)));
        }
    }

    private Optional<Exchange> exchange(ForClause given) {
        if (given.isNothing()) {
            return Optional.of(new ForNothing());
        }
        if (given.getMoney() != null) {
            return phrases.money(given.getMoney()).map(ForMoney::new);
        }
        List<Held> things = Things.held(given.getThings());
        return things.isEmpty() ? Optional.empty() : Optional.of(new ForThings(things));
    }
}
