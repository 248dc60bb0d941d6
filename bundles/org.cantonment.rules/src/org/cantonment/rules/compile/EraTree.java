package org.cantonment.rules.compile;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InEras;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.When;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.RuleSet;

/** The eras of all books, each after the one it follows; a circle is cut where it closes. */
final class EraTree implements EraOrder {

    private static final int ONLY_IN = 1_000_000;
    private static final int FROM = 10;

    private final Map<Id, Set<Id>> lines = new HashMap<>();

    EraTree(List<RuleSet> books) {
        Map<Id, Id> previous = new HashMap<>();
        for (RuleSet book : books) {
            for (Era era : book.eras()) {
                era.after().ifPresent(earlier -> previous.putIfAbsent(era.id(), earlier));
                lines.put(era.id(), Set.of(era.id()));
            }
        }
        for (Id era : List.copyOf(lines.keySet())) {
            Set<Id> line = new LinkedHashSet<>();
            for (Id at = era; at != null && line.add(at); at = previous.get(at)) {
                continue;
            }
            lines.put(era, line);
        }
    }

    @Override
    public boolean follows(Id era, Id earlier) {
        Set<Id> line = lines.get(era);
        return line == null ? era.equals(earlier) : line.contains(earlier);
    }

    private int depth(Id era) {
        Set<Id> line = lines.get(era);
        return line == null ? 1 : line.size();
    }

    /**
     * How closely a line's time is meant, among lines that all hold: only in an era before from the nearest era before
     * any other condition before none.
     */
    int closeness(Validity when) {
        int closeness = 0;
        for (When condition : when.conditions()) {
            if (condition instanceof InEras) {
                closeness += ONLY_IN;
            } else if (condition instanceof Reach reach && reach.from().isPresent()
                    && reach.from().get() instanceof OfEra from) {
                closeness += FROM * depth(from.era());
            } else {
                closeness++;
            }
        }
        return closeness;
    }
}
