package org.cantonment.desk.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.eras.ErasText;
import org.cantonment.desk.eras.ListEras;
import org.cantonment.desk.eras.Owned;
import org.cantonment.desk.eras.ShelfAnswer;
import org.cantonment.desk.eras.ShelfText;
import org.cantonment.desk.files.BookFiles;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.rules.guest.Guests;

/** {@code eras LIST|SHELF}: how a list stands in every era, or what a shelf is good for in each. */
final class ErasCommand {
    private static final int MOST_NEXT = 9;

    private final Terminal terminal;

    ErasCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    int run(Call call) {
        int next = call.value("--next").map(ErasCommand::number).orElse(0);
        if (call.has("--json") && call.has("--reply")) {
            throw new WrongCall("'--json' and '--reply' are two ways to answer; take one.");
        }
        Paths paths = new Paths(terminal);
        Path file = paths.existing(call.paths().get(0));
        boolean list = BookFiles.extension(file).equals("list");
        if (Files.isDirectory(file) || !list && !BookFiles.extension(file).equals("shelf")) {
            throw new WrongCall("'" + terminal.show(file) + "' is no list and no shelf: its name does not end in .list or"
                    + " .shelf.");
        }
        Optional<Path> other = call.value("--shelf").map(paths::existing);
        if (!list && (other.isPresent() || next > 0)) {
            throw new WrongCall("'--next' and '--shelf' are for lists, and '" + terminal.show(file) + "' is a shelf.");
        }
        DeskScope scope = Targets.withShelves(file);
        CampaignDesk desk = terminal.open(scope);
        try {
            return list ? list(desk, file, other, next, call) : shelf(desk, file, call);
        } catch (ListEras.Unclear e) {
            throw new WrongCall(terminal.show(file) + ": " + e.getMessage());
        }
    }

    private int list(CampaignDesk desk, Path file, Optional<Path> other, int next, Call call) throws ListEras.Unclear {
        DeskSnapshot snapshot = desk.snapshot();
        ForceList list = find(snapshot, snapshot.meanings().lists(), file).orElseThrow(() ->
                new WrongCall("'" + terminal.show(file) + "' cannot be read as a list."));
        Owned owned = other.map(shelf -> owned(desk, shelf)).orElseGet(() -> Owned.of(snapshot.meanings(), list));
        ListEras answer = ListEras.of(desk.snapshot().meanings(), terminal.guests().orElseGet(Guests::new), list, owned,
                next, CancelToken.NEVER, new SlowProgress(terminal));
        if (call.has("--json")) {
            terminal.answer(desk.ask(library -> new ErasJson(terminal).write(file, answer,
                    library.document(file).orElseThrow())));
        } else {
            tell(call.has("--reply") ? List.of(ErasText.reply(answer)) : ErasText.lines(answer));
        }
        return answer.written().filter(era -> !era.legal()).isPresent() ? Exit.BREACH : Exit.FINE;
    }

    private Owned owned(CampaignDesk desk, Path file) {
        DeskSnapshot snapshot = desk.snapshot();
        return find(snapshot, snapshot.meanings().shelves(), file).map(shelf -> Owned.of(snapshot.meanings(), shelf))
                .orElseThrow(() -> new WrongCall("'" + terminal.show(file) + "' is no shelf of the same folder."));
    }

    private int shelf(CampaignDesk desk, Path file, Call call) throws ListEras.Unclear {
        DeskSnapshot snapshot = desk.snapshot();
        Shelf shelf = find(snapshot, snapshot.meanings().shelves(), file).orElseThrow(() ->
                new WrongCall("'" + terminal.show(file) + "' cannot be read as a shelf."));
        ShelfAnswer answer = ShelfAnswer.of(snapshot.meanings(), shelf, CancelToken.NEVER, new SlowProgress(terminal));
        ShelfText text = new ShelfText(answer);
        tell(call.has("--json") ? List.of() : call.has("--reply") ? List.of(text.reply()) : text.lines());
        if (call.has("--json")) {
            terminal.answer(new ShelfErasJson(answer).write(terminal, file));
        }
        return Exit.FINE;
    }

    private void tell(List<String> lines) {
        lines.forEach(line -> terminal.answer(Plain.line(line)));
    }

    private static <T> Optional<T> find(DeskSnapshot snapshot, List<T> books, Path file) {
        return books.stream().filter(book -> snapshot.file(book).filter(file::equals).isPresent()).findFirst();
    }

    private static int number(String text) {
        if (text.length() == 1 && text.charAt(0) >= '0' && text.charAt(0) <= '0' + MOST_NEXT) {
            return text.charAt(0) - '0';
        }
        throw new WrongCall("'" + Plain.line(text) + "' is no number from 0 to " + MOST_NEXT + ".");
    }
}
