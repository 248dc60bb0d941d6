package org.cantonment.rules.view;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.campaign.Excused;
import org.cantonment.domain.campaign.FromCheck;
import org.cantonment.domain.campaign.FromLimit;
import org.cantonment.domain.campaign.FromRule;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;

/** Which of a campaign's dispensations covers what is said of a list, and what is left of it then. */
public final class Dispensation {
    private Dispensation() {
    }

    /** The first that lets the player off a card's rule for this unit or formation. */
    public static Optional<Excuse> fromRule(Situation situation, Ruling ruling, Id card, Id subject) {
        return first(situation, ruling, from -> from instanceof FromRule one && one.rule().equals(card)
                && (one.at().isEmpty() || one.at().get().equals(subject) || one.at().get().equals(card)));
    }

    /** The first that lets the player off the limit of points. */
    public static Optional<Excuse> fromLimit(Situation situation, Ruling ruling) {
        return first(situation, ruling, FromLimit.class::isInstance);
    }

    /** The first that lets the player off a check of others. @param subject the unit or formation, if it is about one */
    public static Optional<Excuse> fromCheck(Situation situation, Ruling ruling, String check, Optional<Id> subject) {
        return first(situation, ruling, from -> from instanceof FromCheck one && one.name().equals(check)
                && (one.at().isEmpty() || one.at().equals(subject)));
    }

    private static Optional<Excuse> first(Situation situation, Ruling ruling, Predicate<Excused> covers) {
        List<Excuse> all = situation.excuses();
        return situation.player().isEmpty() ? Optional.empty() : all.stream()
                .filter(excuse -> excuse.player().equals(situation.player().get()) && covers.test(excuse.from())
                        && excuse.when().covers(ruling.occasion(), ruling.eras())).findFirst();
    }

    /** A note in a finding's place, which says by whom and why. */
    public static Finding note(Finding finding, Excuse excuse) {
        String why = excuse.reason().isEmpty() ? "" : ": " + excuse.reason();
        return new Finding(finding.code(), Severity.NOTE, finding.at(), finding.rule(),
                finding.message() + " Excused by " + excuse.by().name() + why + '.', List.of());
    }
}
