package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.Taken;
import org.cantonment.model.book.Line;
import org.cantonment.model.book.Named;
import org.cantonment.model.book.Note;
import org.cantonment.model.force.ForcePackage;
import org.cantonment.model.force.SupportHere;
import org.cantonment.model.ruleset.Unit;
import org.cantonment.notation.form.Codes;

/** Reads the units and formations of a list, or of an example in a rule set; numbers them through. */
final class BodyReader {

    private final Reading reading;
    private final Id list;
    private int count;

    BodyReader(Reading reading, Id list) {
        this.reading = reading;
        this.list = list;
    }

    Body read(List<? extends Line> lines) {
        List<Entry> entries = new ArrayList<>(lines.size());
        List<Entry> supports = new ArrayList<>(0);
        for (Line line : lines) {
            if (line instanceof org.cantonment.model.force.Entry entry) {
                entry(entry).ifPresent(entries::add);
            } else if (line instanceof SupportHere) {
                Body body = read(line.getLines());
                supports.addAll(body.entries());
                supports.addAll(body.supports());
            } else if (!(line instanceof Note)) {
                reading.misplaced(line, "a list's formation");
            }
        }
        return entries.isEmpty() && supports.isEmpty() ? Body.EMPTY : new Body(entries, supports);
    }

    private Optional<Entry> entry(org.cantonment.model.force.Entry entry) {
        count++;
        Id id = reading.at(list.line(count), entry);
        boolean unit = entry.getWhat() instanceof Unit known && !known.eIsProxy();
        if (unit) {
            entry.getLines().stream().filter(line -> !(line instanceof Note)).forEach(line -> reading.problem(line, null,
                    Severity.BREACH, Codes.PLACE, "Nothing stands under a unit; take a dot away, or name a formation above."));
        }
        Body body = entry.getLines().isEmpty() || unit ? Body.EMPTY : read(entry.getLines());
        return Reading.ref(entry.getWhat()).map(what -> new Entry(id, billet(entry),
                reading.atLeastOne(entry, ForcePackage.Literals.ENTRY__COUNT, entry.getCount()), what, strength(entry),
                options(entry), Optional.ofNullable(entry.getAlias()), Reading.text(entry.getLabel()),
                Optional.ofNullable(entry.getJoins()), body, Reading.notes(entry.getLines())));
    }

    private static Optional<String> billet(org.cantonment.model.force.Entry entry) {
        return entry.getBillet() instanceof Named named && !named.eIsProxy() && named.getName() != null
                ? Optional.of(named.getName()) : Optional.empty();
    }

    private OptionalInt strength(org.cantonment.model.force.Entry entry) {
        return entry.getStrength() == null ? OptionalInt.empty() : OptionalInt.of(
                reading.atLeastOne(entry, ForcePackage.Literals.ENTRY__STRENGTH, entry.getStrength()));
    }

    private List<Taken> options(org.cantonment.model.force.Entry entry) {
        if (entry.getOptions().isEmpty()) {
            return List.of();
        }
        List<Taken> taken = new ArrayList<>(entry.getOptions().size());
        for (org.cantonment.model.force.Taken each : entry.getOptions()) {
            if (each.getOption() != null && !each.getOption().eIsProxy() && each.getOption().getName() != null) {
                taken.add(new Taken(reading.atLeastOne(each, ForcePackage.Literals.TAKEN__COUNT, each.getCount()),
                        each.getOption().getName()));
            }
        }
        return taken;
    }
}
