package org.cantonment.rules.guest;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Advice;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.MoveEntry;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Unpin;

/** Looks the mends of a finding over: each must change this list, in a way that can be written. */
final class MendReader {

    private final Set<Id> entries;
    private final Set<Id> places;

    /** @param places the list, its contingents and its entries */
    MendReader(Set<Id> entries, Set<Id> places) {
        this.entries = entries;
        this.places = places;
    }

    void read(List<Mend> mends) throws Nonsense {
        for (Mend mend : mends) {
            if (mend == null || mend.label() == null || mend.label().isBlank() || mend.actions().isEmpty()) {
                throw new Nonsense("handed back a mend without words or without a change");
            }
            for (Action action : mend.actions()) {
                if (!sound(action)) {
                    throw new Nonsense("handed back a mend that cannot be made in this list: " + Misdeeds.shortened(String.valueOf(action)));
                }
            }
        }
    }

    private boolean sound(Action action) {
        if (action instanceof RemoveEntry remove) {
            return entries.contains(remove.entry());
        }
        if (action instanceof SetCount set) {
            return entries.contains(set.entry()) && set.count() >= 0 && set.count() <= Span.UNBOUNDED;
        }
        if (action instanceof SetStrength set) {
            return entries.contains(set.entry()) && set.strength() >= 1 && set.strength() <= Span.UNBOUNDED;
        }
        if (action instanceof SetOption set) {
            return entries.contains(set.entry()) && word(set.option()) && set.count() >= 0
                    && set.count() <= Span.UNBOUNDED;
        }
        if (action instanceof ReplaceUnit replace) {
            return entries.contains(replace.entry()) && unit(replace.unit()) && replace.strength() != null;
        }
        if (action instanceof AddUnit add) {
            return places.contains(add.parent()) && unit(add.unit()) && pin(add.billet()) && add.strength() != null
                    && add.count() >= 1 && add.count() <= Span.UNBOUNDED;
        }
        if (action instanceof MoveEntry move) {
            return entries.contains(move.entry()) && places.contains(move.parent()) && pin(move.billet());
        }
        return action instanceof Advice || action instanceof Unpin unpin && entries.contains(unpin.entry());
    }

    private static boolean unit(Id unit) {
        return unit != null && word(unit.name());
    }

    private static boolean pin(Optional<String> billet) {
        return billet != null && (billet.isEmpty() || word(billet.get()));
    }

    // It is written into somebody's book as it is.
    private static boolean word(String name) {
        return name != null && name.matches("[\\p{L}\\p{N}'-]+");
    }
}
