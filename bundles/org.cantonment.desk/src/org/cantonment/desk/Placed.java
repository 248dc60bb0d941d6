package org.cantonment.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

import org.cantonment.desk.LocatedFinding.RulePlace;
import org.cantonment.desk.dispensing.Dispensations;
import org.cantonment.desk.judging.Judging;
import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.turnout.Shortages;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.NamesBook;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.cantonment.notation.text.TextMend;
import org.cantonment.rules.guest.Guests;
import org.eclipse.xtext.service.OperationCanceledError;

/** From texts to findings at their places, redoing only what a change has touched. */
final class Placed {
    private final Library library;
    private final SortedMap<Path, Sheet> sheets;
    private final Judging judging;
    private final Shortages shortages = new Shortages();

    Placed(Library library, SortedMap<Path, Sheet> sheets, Guests guests) {
        this.judging = new Judging(guests);
        this.library = library;
        this.sheets = sheets;
    }

    int judgements() {
        return judging.judgements();
    }

    DeskSnapshot settle(DeskScope scope, long number, CancelToken cancel, Progress progress) {
        boolean movedRules = read(cancel, progress);
        Meanings meanings = gather();
        Map<ForceList, Path> fileOf = new IdentityHashMap<>();
        sheets.forEach((file, sheet) -> {
            if (sheet.meaning() instanceof ForceList list) {
                fileOf.put(list, file);
            }
        });
        boolean books = sheets.entrySet().stream()
                .anyMatch(e -> e.getValue().meaning() instanceof RuleSet && scope.asks(e.getKey()));
        judging.bringUpToDate(meanings, list -> scope.asks(fileOf.get(list)), books, cancel, progress);
        shortages.bringUpToDate(meanings, list -> scope.asks(fileOf.get(list)), list -> judging.of(list).map(Judged::about),
                cancel);
        Map<Path, Judged> judged = new HashMap<>();
        fileOf.forEach((list, file) -> judging.of(list).ifPresent(j -> judged.put(file, j)));
        Map<Object, Path> places = new IdentityHashMap<>();
        sheets.forEach((file, sheet) -> Optional.ofNullable(sheet.meaning()).ifPresent(book -> places.put(book, file)));
        return new DeskSnapshot(number, place(scope, judged, movedRules, meanings), Collections.unmodifiableMap(judged), meanings,
                places);
    }

    // Returns whether anything but lists was read anew, so that rules may stand elsewhere now.
    private boolean read(CancelToken cancel, Progress progress) {
        boolean moved = false;
        int done = 0;
        for (Map.Entry<Path, Sheet> entry : sheets.entrySet()) {
            cancel.check();
            progress.at(done++, sheets.size(), "Understanding files:");
            Document document = library.document(entry.getKey()).orElse(null);
            if (document == null) {
                continue;
            }
            try {
                document.read(cancel::cancelled);
            } catch (OperationCanceledError e) {
                throw new Cancelled();
            }
            if (entry.getValue().take(document) && !(entry.getValue().meaning() instanceof ForceList)) {
                moved = true;
            }
        }
        return moved;
    }

    private Meanings gather() {
        List<RuleSet> rules = new ArrayList<>();
        List<Campaign> campaigns = new ArrayList<>();
        List<Week> weeks = new ArrayList<>();
        List<NamesBook> names = new ArrayList<>();
        List<ForceList> lists = new ArrayList<>();
        List<Range> ranges = new ArrayList<>();
        List<Shelf> shelves = new ArrayList<>();
        for (Sheet sheet : sheets.values()) {
            if (sheet.meaning() instanceof RuleSet book) {
                rules.add(book);
            } else if (sheet.meaning() instanceof Campaign campaign) {
                campaigns.add(campaign);
            } else if (sheet.meaning() instanceof Week week) {
                weeks.add(week);
            } else if (sheet.meaning() instanceof NamesBook book) {
                names.add(book);
            } else if (sheet.meaning() instanceof ForceList list) {
                lists.add(list);
            } else if (sheet.meaning() instanceof Range range) {
                ranges.add(range);
            } else if (sheet.meaning() instanceof Shelf shelf) {
                shelves.add(shelf);
            }
        }
        return new Meanings(rules, campaigns, weeks, names, lists, ranges, shelves);
    }

    private SortedMap<Path, List<LocatedFinding>> place(DeskScope scope, Map<Path, Judged> judged,
            boolean movedRules, Meanings meanings) {
        Places places = new Places();
        Dispensations dispensations = new Dispensations(meanings, campaign -> Optional.ofNullable(
                places.fileOf(campaign)).flatMap(library::document));
        boolean stores = sheets.entrySet().stream().anyMatch(e -> scope.asks(e.getKey())
                && (e.getValue().meaning() instanceof Shelf || e.getValue().meaning() instanceof Week
                        || e.getValue().meaning() instanceof Campaign));
        List<Finding> ofBooks = new ArrayList<>(judging.ofRules());
        ofBooks.addAll(stores ? shortages.ofBooks() : List.of());
        Map<Path, List<Finding>> ofRules = places.sorted(ofBooks);
        Map<Path, Finding> twice = SameBook.find(sheets);
        SortedMap<Path, List<LocatedFinding>> all = new TreeMap<>();
        sheets.forEach((file, sheet) -> {
            if (scope.asks(file)) {
                List<Finding> engine = new ArrayList<>(ofRules.getOrDefault(file, List.of()));
                Optional.ofNullable(twice.get(file)).ifPresent(engine::add);
                Optional.ofNullable(judged.get(file)).ifPresent(j -> {
                    engine.addAll(j.findings());
                    engine.addAll(shortages.of(j.about().list()));
                    // Nobody would hear of a check that cannot be asked if the campaign is not looked at.
                    j.about().campaign().map(places::fileOf).filter(campaign -> !scope.asks(campaign))
                            .ifPresent(campaign -> engine.addAll(judging.ofLines(j)));
                });
                List<LocatedFinding> known = movedRules ? null : sheet.placedOf(engine);
                all.put(file, known != null ? known : sheet.keep(engine,
                        places.locate(file, sheet, engine, dispensations.forList(judged.get(file)))));
            }
        });
        return Collections.unmodifiableSortedMap(all);
    }

    private static Optional<String> layer(Sheet sheet) {
        return sheet.meaning() instanceof RuleSet book && !book.over().isEmpty() ? Optional.of(book.title())
                : Optional.empty();
    }

    /** Where ids stand, worked out as far as it is asked. */
    private final class Places {
        private final Map<String, Path> byBook = new HashMap<>();

        Places() {
            sheets.forEach((file, sheet) -> {
                if (!(sheet.meaning() instanceof ForceList)) {
                    BookIds.of(sheet.meaning()).ifPresent(id -> byBook.putIfAbsent(id.text(), file));
                }
            });
        }

        // The longest beginning of the id that is a book's own.
        private Path fileOf(Id id) {
            String text = id.card().text();
            while (true) {
                Path file = byBook.get(text);
                int slash = text.lastIndexOf('/');
                if (file != null || slash < 0) {
                    return file;
                }
                text = text.substring(0, slash);
            }
        }

        Map<Path, List<Finding>> sorted(List<Finding> findings) {
            Map<Path, List<Finding>> sorted = new HashMap<>();
            for (Finding finding : findings) {
                Path file = fileOf(finding.at());
                if (file != null) {
                    sorted.computeIfAbsent(file, f -> new ArrayList<>()).add(finding);
                }
            }
            return sorted;
        }

        List<LocatedFinding> locate(Path file, Sheet sheet, List<Finding> findings,
                Function<Finding, Optional<TextMend>> more) {
            Document document = library.document(file).orElse(null);
            List<LocatedFinding> located = sheet.own(document);
            for (Finding finding : findings) {
                LocatedFinding placed = LocatedFinding.of(file, document.lines(), document.locate(finding),
                        finding.rule().flatMap(this::rule).orElse(null));
                located.add(more.apply(finding).map(placed::withMend).orElse(placed));
            }
            located.sort(null);
            return located;
        }

        private Optional<RulePlace> rule(Id id) {
            Path file = fileOf(id);
            return Optional.ofNullable(file).flatMap(library::document).map(document -> new RulePlace(id, file,
                    document.lines().lineOf(document.regionOf(id).getOffset()) + 1,
                    Optional.ofNullable(sheets.get(file)).flatMap(Placed::layer)));
        }
    }
}
