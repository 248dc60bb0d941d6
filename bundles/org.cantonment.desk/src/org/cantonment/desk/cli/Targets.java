package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.desk.DeskScope;
import org.cantonment.desk.files.BookFiles;
import org.cantonment.desk.files.FolderScan;

/** Which folders of books a call's files and folders belong to. */
final class Targets {
    /** A file's folder of books is looked for so many folders up. */
    private static final int UP = 6;

    private final Set<Path> whole = new LinkedHashSet<>();
    private final Map<Path, Set<Path>> some = new LinkedHashMap<>();

    private Targets() {
    }

    /**
     * Finds the folders.
     *
     * @param paths existing files that are books, and folders
     * @return each folder once, in the order in which the call led to it
     */
    static List<DeskScope> of(List<Path> paths) {
        Targets targets = new Targets();
        paths.forEach(targets::add);
        List<DeskScope> scopes = new ArrayList<>();
        targets.whole.forEach(folder -> scopes.add(DeskScope.all(folder)));
        targets.some.forEach((folder, files) -> {
            if (!targets.whole.contains(folder)) {
                scopes.add(DeskScope.only(folder, files));
            }
        });
        return scopes;
    }

    /**
     * The folder of books that a list or shelf belongs to, asked for that file alone, with the shelves read.
     *
     * @param file an existing file that is a book
     */
    static DeskScope withShelves(Path file) {
        return deskOf(file.getParent()).map(folder -> DeskScope.only(folder, Set.of(file)).withShelves())
                .orElse(DeskScope.only(file, Set.of(file)));
    }

    private void add(Path path) {
        if (!Files.isDirectory(path)) {
            some.computeIfAbsent(deskOf(path.getParent()).orElse(path), f -> new HashSet<>()).add(path);
            return;
        }
        List<Path> books = FolderScan.of(path).books();
        Optional<Path> above = books.isEmpty() || books.stream().anyMatch(Targets::leads)
                ? Optional.empty() : deskOf(path);
        if (above.isPresent()) {
            some.computeIfAbsent(above.get(), f -> new HashSet<>()).addAll(books);
        } else {
            whole.add(path);
        }
    }

    /**
     * The folder whose books a file or folder belongs to: the nearest one upwards that holds a campaign, else the nearest
     * that holds a rule set.
     *
     * @param folder where to begin; it is asked first
     */
    static Optional<Path> deskOf(Path folder) {
        Path rules = null;
        Path at = folder;
        for (int up = 0; up <= UP && at != null; up++) {
            Set<String> endings = endings(at);
            if (endings.contains("campaign")) {
                return Optional.of(at);
            }
            if (rules == null && endings.contains("rules")) {
                rules = at;
            }
            at = at.getParent();
        }
        return Optional.ofNullable(rules);
    }

    private static Set<String> endings(Path folder) {
        Set<String> endings = new HashSet<>();
        try {
            FolderScan.children(folder).forEach(child -> endings.add(BookFiles.extension(child)));
        } catch (IOException e) {
            return Set.of(); // a folder that may not be looked into leads nothing
        }
        return endings;
    }

    private static boolean leads(Path file) {
        String extension = BookFiles.extension(file);
        return extension.equals("campaign") || extension.equals("rules");
    }
}
