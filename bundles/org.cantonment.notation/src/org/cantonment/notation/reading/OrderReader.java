package org.cantonment.notation.reading;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.After;
import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.campaign.Excused;
import org.cantonment.domain.campaign.FromCheck;
import org.cantonment.domain.campaign.FromLimit;
import org.cantonment.domain.campaign.FromRule;
import org.cantonment.domain.campaign.Pairing;
import org.cantonment.domain.campaign.Rate;
import org.cantonment.domain.campaign.Show;
import org.cantonment.domain.campaign.Shown;
import org.cantonment.domain.campaign.Veteran;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.form.Codes;
import org.joda.money.Money;

/** Reads the organiser's orders that are said in one line: rates, what is shown, dispensations, named units, methods. */
final class OrderReader {

    private final Reading reading;
    private final Phrases phrases;

    OrderReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
    }

    Optional<Rate> rate(org.cantonment.model.campaign.Rate rate, Id id) {
        Under.onlyNotes(reading, id, rate.getLines(), "a rate");
        Optional<Money> one = phrases.money(rate.getOne());
        Optional<Money> other = phrases.money(rate.getOther());
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        boolean sound = one.get().isPositive() && other.get().isPositive()
                && !one.get().getCurrencyUnit().equals(other.get().getCurrencyUnit());
        if (!sound) {
            reading.problem(rate, null, Severity.BREACH, Codes.NUMBER_RANGE,
                    "A rate sets an amount of one currency against an amount of another, both above 0.");
            return Optional.empty();
        }
        return Optional.of(new Rate(id, one.get(), other.get(), phrases.when(rate.getWhen())));
    }

    /** What is shown to somebody nobody knows is shown to nobody. */
    Optional<Show> show(org.cantonment.model.campaign.Show show, Id id) {
        Under.onlyNotes(reading, id, show.getLines(), "what is shown");
        List<Id> players = Reading.refs(show.getPlayers());
        boolean toNobody = !show.isAll() && players.isEmpty();
        After after = Words.of(After.class, show.getAfter()).orElse(After.AT_ONCE);
        return toNobody ? Optional.empty()
                : Words.of(Shown.class, show.getWhat()).map(what -> new Show(id, what, show.isAll(), players, after));
    }

    Optional<Excuse> excuse(org.cantonment.model.campaign.Excuse excuse, Id id) {
        Under.onlyNotes(reading, id, excuse.getLines(), "a dispensation");
        Optional<Id> player = Reading.ref(excuse.getPlayer());
        Optional<Excused> from = excused(excuse);
        Optional<Id> by = Reading.ref(excuse.getBy());
        boolean whole = player.isPresent() && from.isPresent() && by.isPresent();
        return !whole ? Optional.empty() : Optional.of(new Excuse(id, player.get(), from.get(),
                phrases.when(excuse.getWhen()), by.get(), Reading.text(excuse.getReason())));
    }

    /** Without the one unit it is for, a dispensation would be for all, so it is left out. */
    private static Optional<Excused> excused(org.cantonment.model.campaign.Excuse excuse) {
        if (excuse.isLimit()) {
            return Optional.of(new FromLimit());
        }
        Optional<Id> at = Reading.ref(excuse.getAt());
        if (Things.lost(excuse.getAt())) {
            return Optional.empty();
        }
        return excuse.getRule() instanceof org.cantonment.model.campaign.CheckUse check
                ? Optional.ofNullable(check.getName()).map(name -> new FromCheck(name, at))
                : Reading.ref(excuse.getRule()).map(rule -> new FromRule(rule, at));
    }

    Optional<Veteran> veteran(org.cantonment.model.campaign.Veteran veteran) {
        Id id = reading.id(veteran);
        Under.onlyNotes(reading, id, veteran.getLines(), Under.words("veteran", veteran));
        Optional<Id> player = Reading.ref(veteran.getPlayer());
        Optional<Id> unit = Reading.ref(veteran.getUnit());
        return player.isEmpty() || unit.isEmpty() ? Optional.empty()
                : Optional.of(new Veteran(id, Reading.label(veteran), player.get(), unit.get(),
                        Reading.notes(veteran.getLines())));
    }

    Optional<Pairing> pairing(org.cantonment.model.campaign.Pairing pairing, Id id) {
        Under.onlyNotes(reading, id, pairing.getLines(), "a pairing");
        return Optional.ofNullable(pairing.getName()).map(name -> new Pairing(id, name,
                Settings.read(phrases, pairing.getSettings()), phrases.when(pairing.getWhen())));
    }

    Optional<CheckUse> check(org.cantonment.model.campaign.CheckUse check, Id id) {
        Under.onlyNotes(reading, id, check.getLines(), "a check");
        check.getSettings().stream().filter(setting -> setting.getName() != null)
                .forEach(setting -> reading.at(id.child(setting.getName()), setting));
        return Optional.ofNullable(check.getName()).map(name -> new CheckUse(id, name,
                Words.of(Severity.class, check.getSeverity()), Settings.read(phrases, check.getSettings()),
                phrases.when(check.getWhen())));
    }
}
