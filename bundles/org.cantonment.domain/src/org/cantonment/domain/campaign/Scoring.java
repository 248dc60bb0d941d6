package org.cantonment.domain.campaign;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A points scheme and its chain of tie-breaks. */
public record Scoring(
        Id id, String label, List<Score> scores, List<Bonus> bonuses, List<TieStep> ties, Chain chain,
        Optional<Struckout> struckout, List<String> notes) implements Titled {

    public Scoring {
        scores = List.copyOf(scores);
        bonuses = List.copyOf(bonuses);
        ties = List.copyOf(ties);
        notes = List.copyOf(notes);
    }
}
