package org.cantonment.stock.tests;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Casualties;
import org.cantonment.domain.campaign.Clauses;
import org.cantonment.domain.campaign.Correction;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Doing;
import org.cantonment.domain.campaign.Fund;
import org.cantonment.domain.campaign.Game;
import org.cantonment.domain.campaign.MoveVerb;
import org.cantonment.domain.campaign.Moved;
import org.cantonment.domain.campaign.PassVerb;
import org.cantonment.domain.campaign.Passed;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Held;

/** Puts together weeks of a season that begins on a Monday. */
final class Weeks {

    static final LocalDate BEGIN = LocalDate.of(2031, 3, 3);

    private Weeks() {
    }

    static Id player(String name) {
        return Id.of("Season", name);
    }

    static List<Held> held(String... texts) {
        return Arrays.stream(texts).map(text -> {
            String[] words = text.split(" ");
            return new Held(words.length == 1 ? 1 : Integer.parseInt(words[0]), Things.id(words[words.length - 1]),
                    Optional.empty());
        }).toList();
    }

    static Clauses on(LocalDate day) {
        return new Clauses(Optional.empty(), Optional.empty(), Optional.ofNullable(day), Optional.empty(), Optional.empty(),
                OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), false, false,
                Optional.empty());
    }

    static Deed deed(String who, Doing doing, LocalDate day, Deed... inner) {
        return new Deed(Id.of("Week", who + '-' + doing.hashCode() + '-' + day), player(who), doing, on(day),
                List.of(inner), List.of());
    }

    static Deed moved(String who, MoveVerb verb, LocalDate day, String... things) {
        return deed(who, new Moved(verb, held(things)), day);
    }

    static Deed passed(String who, PassVerb verb, String to, LocalDate day, String... things) {
        return deed(who, new Passed(verb, held(things), Optional.ofNullable(to).map(Weeks::player)), day);
    }

    /** A game that the first won, and what it cost. */
    static Deed beat(String who, String other, LocalDate day, Deed... losses) {
        return deed(who, new Game(false, player(other), Optional.empty()), day, losses);
    }

    static Week week(int number, Deed... deeds) {
        return week(number, List.of(), deeds);
    }

    static Week week(int number, List<Correction> corrections, Deed... deeds) {
        return new Week(Id.of("Week" + number), number, Optional.of(Id.of("Season")), List.of(deeds), corrections,
                List.of(), List.of(), List.of());
    }

    static Optional<Campaign> campaign(List<Casualties> casualties, List<Fund> funds,
            Round... rounds) {
        List<Round> all = new ArrayList<>(List.of(rounds));
        return Optional.of(new Campaign(Id.of("Season"), "", Optional.of(BEGIN), List.of(), List.of(), List.of(), List.of(),
                List.of(), all, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), casualties, funds,
                List.of(), List.of(), List.of(), List.of(), List.of()));
    }
}
