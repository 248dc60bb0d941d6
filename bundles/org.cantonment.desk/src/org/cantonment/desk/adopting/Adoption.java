package org.cantonment.desk.adopting;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Function;

import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.adopting.ListChange.Kind;
import org.cantonment.desk.adopting.ListChange.Standing;
import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.finding.Severity;

/**
 * What would change for all lists of a folder.
 *
 * @param changes one for each list, in the order of the files, also where nothing changes
 * @param said    what is new to be said of books that are no lists: a layer that contradicts, an example that differs
 */
public record Adoption(List<ListChange> changes, List<LocatedFinding> said) {

    public Adoption {
        changes = List.copyOf(changes);
        said = List.copyOf(said);
    }

    /** The changes of one kind, in the order of the files. */
    public List<ListChange> of(Kind kind) {
        return changes.stream().filter(change -> change.kind() == kind).toList();
    }

    /**
     * Compares how all lists of a folder stand before and after.
     *
     * @param before the folder as it is
     * @param after  the same folder with the book adopted
     * @param cancel asked for each list
     * @throws Cancelled if the token says so
     */
    public static Adoption between(DeskSnapshot before, DeskSnapshot after, CancelToken cancel) {
        List<ListChange> changes = new ArrayList<>();
        List<LocatedFinding> said = new ArrayList<>();
        for (Path file : after.files()) {
            cancel.check();
            List<LocatedFinding> was = before.findings(file);
            List<LocatedFinding> is = after.findings(file);
            Judged judged = after.judged(file).orElse(null);
            if (judged == null) {
                said.addAll(beyond(is, was));
                continue;
            }
            List<LocatedFinding> oldBreaches = breaches(was);
            List<LocatedFinding> newBreaches = breaches(is);
            changes.add(new ListChange(file, ListTitle.of(judged.about().list(), after.meanings()),
                    new Standing(oldBreaches.isEmpty(), points(before, file)),
                    new Standing(newBreaches.isEmpty(), points(after, file)), beyond(newBreaches, oldBreaches),
                    beyond(oldBreaches, newBreaches)));
        }
        return new Adoption(changes, said);
    }

    private static OptionalLong points(DeskSnapshot snapshot, Path file) {
        return snapshot.judged(file).flatMap(Judged::verdict).map(v -> OptionalLong.of(v.points()))
                .orElse(OptionalLong.empty());
    }

    private static List<LocatedFinding> breaches(List<LocatedFinding> findings) {
        return findings.stream().filter(finding -> finding.severity() == Severity.BREACH).toList();
    }

    // The same rule broken at the same line is the same breach, whatever numbers its sentence has now.
    private static List<LocatedFinding> beyond(List<LocatedFinding> some, List<LocatedFinding> others) {
        Function<LocatedFinding, String> key = finding -> finding.severity() + " " + finding.line() + ' '
                + finding.code() + ' ' + finding.rule().map(rule -> rule.id().card().text()).orElse("");
        Map<String, Integer> there = new HashMap<>();
        others.forEach(finding -> there.merge(key.apply(finding), 1, Integer::sum));
        return some.stream().filter(finding -> there.merge(key.apply(finding), -1, Integer::sum) < 0).toList();
    }
}
