package org.cantonment.domain.campaign;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;

/** A round: its eras, dates and limits, and the meetings written beneath it. Sessions stand in playing order. */
public record Round(
        Id id, int number, String label, List<Id> eras, List<PointsLimit> limits, List<Due> dues,
        Optional<PlayDates> play, List<Session> sessions, Optional<Level> likeness, OptionalInt turnoutPercent,
        OptionalInt paintedPercent, Optional<RoundBudget> budget, Optional<Published> published,
        List<Fact> likenessFacts, List<Deed> deeds, List<String> notes) implements Titled {

    public Round {
        eras = List.copyOf(eras);
        limits = List.copyOf(limits);
        dues = List.copyOf(dues);
        sessions = List.copyOf(sessions);
        likenessFacts = List.copyOf(likenessFacts);
        deeds = List.copyOf(deeds);
        notes = List.copyOf(notes);
    }
}
