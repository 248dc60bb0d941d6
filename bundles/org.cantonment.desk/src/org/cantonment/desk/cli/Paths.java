package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.files.BookFiles;
import org.cantonment.notation.form.Near;

/** The files and folders that a call names. */
final class Paths {
    private final Terminal terminal;

    Paths(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * A file or folder that is there.
     *
     * @throws WrongCall if it is not; the message names the nearest that is
     */
    Path existing(String word) {
        Path path = resolve(word);
        if (!Files.exists(path)) {
            throw new WrongCall("There is no file or folder '" + terminal.show(path) + "'."
                    + nearest(path).map(near -> " Did you mean '" + terminal.show(near) + "'?").orElse(""));
        }
        return path;
    }

    /** @throws WrongCall unless it is a folder that is there */
    Path folder(String word) {
        Path path = existing(word);
        if (!Files.isDirectory(path)) {
            throw new WrongCall("'" + terminal.show(path) + "' is a file, and a folder is asked for.");
        }
        return path;
    }

    /** @throws WrongCall unless it is a folder, or a file that is a book */
    Path bookOrFolder(String word) {
        Path path = existing(word);
        if (!Files.isDirectory(path) && !BookFiles.isBook(path)) {
            throw new WrongCall("'" + terminal.show(path) + "' is no book: its name does not end in "
                    + BookFiles.spoken() + ".");
        }
        return path;
    }

    /** @throws WrongCall unless it is a file that is a list */
    Path list(String word) {
        Path path = existing(word);
        if (Files.isDirectory(path)) {
            throw new WrongCall("'" + terminal.show(path) + "' is a folder, and a list is asked for.");
        }
        if (!BookFiles.extension(path).equals("list")) {
            throw new WrongCall("'" + terminal.show(path) + "' is no list: its name does not end in .list.");
        }
        return path;
    }

    private Path resolve(String word) {
        try {
            return terminal.resolve(word);
        } catch (InvalidPathException e) {
            throw new WrongCall("'" + Plain.line(word) + "' cannot be the name of a file.");
        }
    }

    private static Optional<Path> nearest(Path missing) {
        Path folder = missing.getParent();
        if (folder == null || missing.getFileName() == null || !Files.isDirectory(folder)) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> children = Files.newDirectoryStream(folder)) {
            for (Path child : children) {
                if (Files.isDirectory(child) || BookFiles.isBook(child)) {
                    names.add(child.getFileName().toString());
                }
            }
        } catch (IOException e) {
            return Optional.empty();
        }
        names.sort(null);
        return Near.of(missing.getFileName().toString(), names).map(folder::resolve);
    }
}
