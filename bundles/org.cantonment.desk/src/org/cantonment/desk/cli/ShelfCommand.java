package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.csv.Field;
import org.cantonment.desk.csv.Mapping;
import org.cantonment.desk.csv.ShelfExport;
import org.cantonment.desk.csv.ShelfFile;
import org.cantonment.desk.csv.ShelfImport;
import org.cantonment.desk.csv.ShelfImport.Made;
import org.cantonment.desk.csv.Table;
import org.cantonment.desk.files.BookFiles;
import org.cantonment.desk.files.SafeWrite;
import org.cantonment.desk.files.TextReading;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.shelf.Shelf;

/** {@code shelf import FILE.csv --to SHELF.shelf} and {@code shelf export SHELF.shelf}. */
final class ShelfCommand {
    private final Terminal terminal;
    private final Paths paths;

    ShelfCommand(Terminal terminal) {
        this.terminal = terminal;
        this.paths = new Paths(terminal);
    }

    int run(Call call) {
        String act = call.paths().get(0);
        Path file = paths.existing(call.paths().get(1));
        if (Files.isDirectory(file)) {
            throw new WrongCall("'" + terminal.show(file) + "' is a folder, and a file is asked for.");
        }
        try {
            return switch (act) {
                case "import" -> imported(file, call);
                case "export" -> exported(file, call);
                default -> throw new WrongCall("'shelf' imports or exports: write 'shelf import FILE.csv --to SHELF.shelf'"
                        + " or 'shelf export SHELF.shelf'.");
            };
        } catch (IOException e) {
            throw new WrongCall("'" + terminal.show(file) + "' " + e.getMessage() + ".");
        } catch (Table.NoTable | Mapping.Wrong | ShelfFile.Unclear e) {
            throw new WrongCall(terminal.show(file) + ": " + e.getMessage());
        }
    }

    private int exported(Path file, Call call) throws IOException {
        if (!BookFiles.extension(file).equals("shelf")) {
            throw new WrongCall("'" + terminal.show(file) + "' is no shelf: its name does not end in .shelf.");
        }
        DeskSnapshot snapshot = CampaignDesk.open(Targets.withShelves(file), CancelToken.NEVER, new SlowProgress(terminal))
                .snapshot();
        Shelf shelf = snapshot.meanings().shelves().stream().filter(one -> snapshot.file(one).filter(file::equals).isPresent())
                .findFirst().orElseThrow(() -> new WrongCall("'" + terminal.show(file) + "' cannot be read as a shelf."));
        String text = ShelfExport.of(shelf, TextReading.of(file).text(), snapshot.meanings().ranges());
        if (call.value("--to").isPresent()) {
            Path target = terminal.resolve(call.value("--to").get());
            if (Files.exists(target)) {
                throw new WrongCall("'" + terminal.show(target) + "' is there already; name another.");
            }
            Files.writeString(target, text, StandardCharsets.UTF_8);
        } else {
            terminal.out().print(text);
        }
        return Exit.FINE;
    }

    private int imported(Path file, Call call) throws IOException, Table.NoTable, Mapping.Wrong, ShelfFile.Unclear {
        Path target = terminal.resolve(call.value("--to").orElseThrow(() -> new WrongCall(
                "Say where the shelf is to go: --to SHELF.shelf.")));
        if (!BookFiles.extension(target).equals("shelf")) {
            throw new WrongCall("'" + terminal.show(target) + "' is no shelf: its name does not end in .shelf.");
        }
        TextReading reading = TextReading.of(file);
        if (!reading.broken().isEmpty()) {
            throw new WrongCall("'" + terminal.show(file) + "' holds bytes that are no text in UTF-8; save it as UTF-8.");
        }
        Table table = Table.of(reading.text());
        Optional<TextReading> before = Files.exists(target) ? Optional.of(TextReading.of(target)) : Optional.empty();
        if (before.isPresent() && !call.has("--replace")) {
            throw new WrongCall("'" + terminal.show(target) + "' is there already: --replace puts the table's things in the"
                    + " place of those on it.");
        }
        Mapping mapping = Mapping.kept(before.map(TextReading::text).orElse("")).with(call.values("--map"));
        Path folder = Optional.ofNullable(target.getParent()).filter(Files::isDirectory).orElseThrow(() -> new WrongCall(
                "There is no folder for '" + terminal.show(target) + "'."));
        CampaignDesk desk = CampaignDesk.open(DeskScope.only(Targets.deskOf(folder).orElse(folder), Set.of(target))
                .withShelves(), CancelToken.NEVER, new SlowProgress(terminal));
        List<Optional<Field>> fields = mapping.of(table);
        List<Made> rows = new ArrayList<>(ShelfImport.of(table, fields, desk.snapshot().meanings().ranges()));
        ShelfFile shelf = before.isPresent() ? ShelfFile.of(before.get().text(), ShelfImport.withWishes(fields))
                : ShelfFile.anew(call.value("--of"), call.value("--in"), call.value("--on"));
        String text = settled(desk, target, shelf, mapping, table, rows);
        if (before.isPresent()) {
            SafeWrite.replace(target, before.get(), text);
        } else {
            Files.writeString(target, text, StandardCharsets.UTF_8);
        }
        return tell(file, target, rows);
    }

    /** The text of the shelf, when what the notation does not understand has become a remark, too. */
    private static String settled(CampaignDesk desk, Path target, ShelfFile shelf, Mapping mapping, Table table,
            List<Made> rows) {
        ShelfFile.Written written = shelf.with(mapping.remarks(), rows);
        DeskSnapshot read = desk.update(target, written.text(), CancelToken.NEVER);
        TreeMap<Integer, String> wrong = new TreeMap<>();
        for (LocatedFinding finding : read.findings(target)) {
            int row = written.rowOf(finding.line());
            if (finding.severity() == Severity.BREACH && row >= 0 && rows.get(row).trouble().isEmpty()) {
                wrong.putIfAbsent(row, finding.message());
            }
        }
        wrong.forEach((row, message) -> rows.set(row, ShelfImport.refused(table, row, message)));
        return wrong.isEmpty() ? written.text() : shelf.with(mapping.remarks(), rows).text();
    }

    private int tell(Path file, Path target, List<Made> rows) {
        List<Made> odd = rows.stream().filter(row -> !row.trouble().isEmpty()).toList();
        odd.forEach(row -> terminal.answer(Plain.line(terminal.show(file) + ":" + row.line() + ": caution " + ShelfImport.ROW + ": "
                + row.trouble())));
        terminal.say((rows.size() - odd.size()) + " of " + rows.size() + " rows are on " + terminal.show(target)
                + (odd.isEmpty() ? "." : "; the others stand there as remarks."));
        return odd.isEmpty() ? Exit.FINE : Exit.BREACH;
    }
}
