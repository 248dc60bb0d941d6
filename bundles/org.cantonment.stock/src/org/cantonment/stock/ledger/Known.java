package org.cantonment.stock.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.campaign.Clauses;
import org.cantonment.domain.campaign.Correction;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Struck;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;

/** The deeds of a season as they were known at one time: corrections that were made by then have been carried out. */
final class Known {

    /** The code of a correction that strikes what nobody wrote. */
    static final String NOTHING_STRUCK = "week.nothing-struck";

    private final Calendar calendar;
    private final Map<Integer, List<Deed>> byWeek = new TreeMap<>();
    private final List<Finding> findings = new ArrayList<>();

    Known(Calendar calendar, Collection<Week> weeks, AsOf asOf) {
        this.calendar = calendar;
        List<Week> known = weeks.stream().filter(week -> asOf.week().isEmpty() || week.number() <= asOf.week().getAsInt())
                .sorted(Comparator.comparingInt(Week::number).thenComparing(Week::id)).toList();
        known.forEach(week -> byWeek.computeIfAbsent(week.number(), number -> new ArrayList<>()).addAll(week.deeds()));
        known.forEach(week -> week.corrections().forEach(this::correct));
    }

    private void correct(Correction correction) {
        List<Deed> deeds = byWeek.computeIfAbsent(correction.week(), number -> new ArrayList<>());
        for (Struck line : correction.lines()) {
            if (!line.not()) {
                deeds.add(line.deed());
            } else if (!strike(deeds, line.deed())) {
                findings.add(Finding.of(NOTHING_STRUCK, Severity.CAUTION, line.id(), "Week " + correction.week()
                        + " has no such line, so nothing is struck. Write it as it stands there."));
            }
        }
    }

    /** Strikes one deed that says the same, wherever it stands; days and remarks need not be said again. */
    private static boolean strike(List<Deed> deeds, Deed struck) {
        for (int i = 0; i < deeds.size(); i++) {
            Deed deed = deeds.get(i);
            if (same(deed, struck)) {
                deeds.remove(i);
                return true;
            }
            List<Deed> inner = new ArrayList<>(deed.inner());
            if (strike(inner, struck)) {
                deeds.set(i, new Deed(deed.id(), deed.who(), deed.doing(), deed.clauses(), inner, deed.notes()));
                return true;
            }
        }
        return false;
    }

    private static boolean same(Deed deed, Deed struck) {
        return deed.who().equals(struck.who()) && deed.doing().equals(struck.doing())
                && (struck.clauses().on().isEmpty() || struck.clauses().on().equals(deed.clauses().on()));
    }

    /** All deeds, those within others too, by week and then as they were written. */
    List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        byWeek.forEach((week, deeds) -> deeds.forEach(deed -> {
            entries.add(new Entry(week, calendar.day(week, deed.clauses()), deed, null));
            deed.inner().forEach(inner -> entries.add(new Entry(week, calendar.day(week,
                    inner.clauses().on().isPresent() ? inner.clauses() : deed.clauses()), inner, deed)));
        }));
        return entries;
    }

    List<Finding> findings() {
        return findings;
    }

    /** The clauses that say which round a deed belongs to: its own, else those of its game. */
    static Clauses clauses(Entry entry) {
        return entry.game() == null || entry.deed().clauses().round().isPresent() ? entry.deed().clauses()
                : entry.game().clauses();
    }
}
