package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;

import org.cantonment.desk.shopping.GrowAnswer;
import org.cantonment.desk.shopping.Step;
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
        for (Step step : answer.steps()) {
            if (!step.book().isEmpty()) {
                all &= write(folder.resolve(player.id().name().toLowerCase(Locale.ROOT) + "-" + step.round() + ".list"), step);
            }
        }
        return all;
    }

    private boolean write(Path file, Step step) {
        try {
            Files.writeString(file, step.book(), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            terminal.say("The list for round " + step.round() + " stands in '" + terminal.show(file) + "'.");
            return true;
        } catch (FileAlreadyExistsException e) {
            terminal.say("'" + terminal.show(file) + "' is there already and stays as it is; the list for round " + step.round()
                    + " was not written.");
        } catch (IOException e) {
            terminal.say("'" + terminal.show(file) + "' cannot be written: " + e.getMessage() + ".");
        }
        return false;
    }
}
