package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;

import org.cantonment.desk.shopping.GrowAnswer;
import org.cantonment.domain.campaign.Player;

/** Writes lists that were composed into files of their own; what is there already is left alone. */
final class ListFiles {
    private final Terminal terminal;
    private final Path folder;

    ListFiles(Terminal terminal, Path folder) {
        this.terminal = terminal;
        this.folder = folder;
    }

    /** Whether all of them are written. */
    boolean write(GrowAnswer answer, Player player) {
        boolean all = true;
        for (Map.Entry<String, String> book : answer.books(player).entrySet()) {
            all &= write(folder.resolve(book.getKey()), book.getValue());
        }
        return all;
    }

    private boolean write(Path file, String text) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            terminal.say("'" + terminal.show(file) + "' is written.");
            return true;
        } catch (FileAlreadyExistsException e) {
            terminal.say("'" + terminal.show(file) + "' is there already and stays as it is; the list was not written.");
        } catch (IOException e) {
            terminal.say("'" + terminal.show(file) + "' cannot be written: " + e.getMessage() + ".");
        }
        return false;
    }
}
