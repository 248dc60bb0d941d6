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
import org.cantonment.desk.files.BookFiles;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.ForceList;

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
        Path file = paths.bookOrFolder(call.paths().get(0));
        if (Files.isDirectory(file) || !BookFiles.extension(file).equals("list")) {
            throw new WrongCall("'" + terminal.show(file) + "' is no list: its name does not end in .list.");
        }
        CampaignDesk desk = terminal.open(Targets.withShelves(file));
        return list(desk, file, next, call);
    }

    private int list(CampaignDesk desk, Path file, int next, Call call) {
        DeskSnapshot snapshot = desk.snapshot();
        Optional<ForceList> list = snapshot.meanings().lists().stream()
                .filter(one -> snapshot.file(one).filter(file::equals).isPresent()).findFirst();
        ListEras answer;
        try {
            answer = ListEras.of(snapshot.meanings(), list.orElseThrow(() -> new WrongCall("'" + terminal.show(file)
                    + "' cannot be read as a list.")), Owned.unknown(""), next, CancelToken.NEVER,
                    new SlowProgress(terminal));
        } catch (ListEras.Unclear e) {
            throw new WrongCall(terminal.show(file) + ": " + e.getMessage());
        }
        if (call.has("--json")) {
            terminal.answer(desk.ask(library -> new ErasJson(terminal).write(file, answer,
                    library.document(file).orElseThrow())));
        } else if (call.has("--reply")) {
            terminal.answer(Plain.line(ErasText.reply(answer)));
        } else {
            ErasText.lines(answer).forEach(line -> terminal.answer(Plain.line(line)));
        }
        return answer.written().filter(era -> !era.legal()).isPresent() ? Exit.BREACH : Exit.FINE;
    }

    private static int number(String text) {
        if (text.length() == 1 && text.charAt(0) >= '0' && text.charAt(0) <= '0' + MOST_NEXT) {
            return text.charAt(0) - '0';
        }
        throw new WrongCall("'" + Plain.line(text) + "' is no number from 0 to " + MOST_NEXT + ".");
    }
}
