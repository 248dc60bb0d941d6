package org.cantonment.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;

/** Two files that say that they are the same book. */
final class SameBook {
    /** The same book stands in two files. */
    static final String CODE = "book.twice";

    private SameBook() {
    }

    /** One finding for each file that is not alone. */
    static Map<Path, Finding> find(SortedMap<Path, Sheet> sheets) {
        Map<Id, List<Path>> files = new HashMap<>();
        sheets.forEach((file, sheet) -> BookIds.of(sheet.meaning())
                .filter(id -> !(sheet.meaning() instanceof Shelf))
                .ifPresent(id -> files.computeIfAbsent(id, i -> new ArrayList<>(1)).add(file)));
        Map<Path, Finding> found = new HashMap<>();
        files.forEach((id, same) -> {
            if (same.size() > 1) {
                for (Path file : same) {
                    found.put(file, finding(id, file, same, sheets.get(file).meaning()));
                }
            }
        });
        return found;
    }

    private static Finding finding(Id id, Path file, List<Path> same, Object meaning) {
        Path other = same.get(0).equals(file) ? same.get(1) : same.get(0);
        String where = file.getParent().relativize(other).toString().replace('\\', '/');
        String more = same.size() == 2 ? "" : " and " + (same.size() - 2) + " more";
        String tail = " also stands in " + where + more + "; ";
        if (meaning instanceof ForceList) {
            return Finding.of(CODE, Severity.BREACH, id, "This list" + tail
                    + "nobody can tell which of them counts. Take one out, or give it a name of its own.");
        }
        if (meaning instanceof Week) {
            return Finding.of(CODE, Severity.CAUTION, id, "This week" + tail + "what both say is booked together.");
        }
        return Finding.of(CODE, Severity.BREACH, id, "This book" + tail
                + (same.get(0).equals(file) ? "this one counts." : "the other one counts."));
    }
}
