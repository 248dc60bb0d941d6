package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.desk.files.FileTrouble;
import org.cantonment.desk.files.FolderScan;
import org.cantonment.desk.files.SafeWrite;
import org.cantonment.desk.files.TextReading;
import org.cantonment.notation.text.Layout;
import org.cantonment.notation.text.TextChange;

/** {@code format PATH…}: sets books in order. Line ends, the mark at the beginning and the encoding stay as they are. */
final class FormatCommand {
    private final Terminal terminal;

    FormatCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    int run(List<String> words, boolean check) {
        Paths paths = new Paths(terminal);
        List<Path> existing = words.stream().map(paths::bookOrFolder).toList();
        Set<Path> files = new TreeSet<>();
        int code = Exit.FINE;
        for (Path path : existing) {
            if (Files.isDirectory(path)) {
                FolderScan scan = FolderScan.of(path);
                files.addAll(scan.books());
                for (FileTrouble trouble : scan.troubles()) {
                    terminal.say(terminal.show(trouble.path()) + " " + trouble.why() + ".");
                    code = Exit.WRONG;
                }
            } else {
                files.add(path);
            }
        }
        for (Path file : files) {
            code = Math.max(code, format(file, check));
        }
        return code;
    }

    private int format(Path file, boolean check) {
        try {
            TextReading reading = TextReading.of(file);
            if (!reading.broken().isEmpty()) {
                terminal.say(terminal.show(file) + " holds bytes that are no text in UTF-8, and was left as it is.");
                return Exit.WRONG;
            }
            String text = TextChange.apply(reading.text(), Layout.of(reading.text()));
            if (text.equals(reading.text())) {
                return Exit.FINE;
            }
            if (!check) {
                SafeWrite.replace(file, reading, text);
            }
            terminal.answer(terminal.show(file));
            return check ? Exit.BREACH : Exit.FINE;
        } catch (IOException e) {
            terminal.say(terminal.show(file) + " " + e.getMessage() + ".");
            return Exit.WRONG;
        }
    }
}
