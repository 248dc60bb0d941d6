package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.cantonment.model.book.Line;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.notation.reading.Under.Taken;

/** Reads how true a piece must be to what it stands for: in rule sets, in campaigns, and for one round. */
final class LikenessReader {

    private final Reading reading;
    private final Phrases phrases;

    LikenessReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
    }

    Likeness read(org.cantonment.model.ruleset.Likeness likeness) {
        Id id = reading.id(likeness);
        List<Fact> facts = new ArrayList<>();
        Under.each(reading, id, likeness.getLines(), Under.words("likeness", likeness),
                (line, at) -> take(line, at, facts));
        return new Likeness(id, Reading.label(likeness), facts, Reading.notes(likeness.getLines()));
    }

    /** Reads the line into the facts if it is one of likeness. */
    Taken take(Line line, Id id, List<Fact> facts) {
        boolean ours = line instanceof org.cantonment.model.ruleset.Allows
                || line instanceof org.cantonment.model.ruleset.Stands
                || line instanceof org.cantonment.model.ruleset.Turns
                || line instanceof org.cantonment.model.ruleset.OneTable;
        fact(line, id).ifPresent(facts::add);
        return ours ? Taken.ALONE : Taken.NO;
    }

    /** What a line of likeness says; empty for any other line, and where a name in it is lost. */
    Optional<Fact> fact(Line line, Id id) {
        if (line instanceof org.cantonment.model.ruleset.Allows allows) {
            return Words.of(Level.class, allows.getLevel()).map(level -> new Allows(id, level,
                    phrases.when(allows.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Stands stands) {
            return stands(stands, id);
        }
        if (line instanceof org.cantonment.model.ruleset.Turns turns) {
            return turns(turns, id);
        }
        return line instanceof org.cantonment.model.ruleset.OneTable table
                ? Optional.of(new OneTable(id, phrases.when(table.getWhen()))) : Optional.empty();
    }

    private Optional<Fact> stands(org.cantonment.model.ruleset.Stands stands, Id id) {
        List<Id> what = Reading.refs(stands.getWhat());
        List<Id> standFor = Reading.refs(stands.getFor());
        if (what.isEmpty() || standFor.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt percent = stands.getPercent() == null ? OptionalInt.empty()
                : OptionalInt.of(reading.percent(stands, RulesetPackage.Literals.STANDS__PERCENT, stands.getPercent()));
        return Optional.of(new Stands(id, what, standFor, percent, stands.isLeave(), phrases.when(stands.getWhen())));
    }

    /** A part of the price that means nothing would make the conversion cheaper, so the line is left out. */
    private Optional<Fact> turns(org.cantonment.model.ruleset.Turns turns, Id id) {
        List<Content> from = Things.contents(turns.getFrom());
        boolean whole = !from.isEmpty() && from.size() == turns.getFrom().size();
        return Things.content(turns.getTo()).filter(to -> whole).map(to -> new Turns(id, from, to,
                Reading.optional(turns.getTimes()), phrases.when(turns.getWhen())));
    }
}
