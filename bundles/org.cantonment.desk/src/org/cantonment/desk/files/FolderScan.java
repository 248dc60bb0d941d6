package org.cantonment.desk.files;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The books below a folder, sorted by path. Links are followed, each place is entered once however many links lead
 * there, and what cannot be read is named. Files and folders whose name begins with a dot are left alone.
 *
 * @param books    the books, in the order of their names, a folder's own before those of the folders in it
 * @param troubles what could not be looked into
 */
public record FolderScan(List<Path> books, List<FileTrouble> troubles) {
    /** Folders nested deeper than this are not entered, and said so. */
    static final int DEEPEST = 64;

    private static final Comparator<Path> BY_NAME = Comparator.comparing(p -> p.getFileName().toString());

    public FolderScan {
        books = List.copyOf(books);
        troubles = List.copyOf(troubles);
    }

    /**
     * Looks through a folder.
     *
     * @param folder an existing folder; what the scan names begins with it
     */
    public static FolderScan of(Path folder) {
        Walk walk = new Walk();
        walk.enter(folder, 0);
        return new FolderScan(walk.books, walk.troubles);
    }

    /**
     * What lies in a folder, by name, without what begins with a dot.
     *
     * @throws IOException if the folder may not be read
     */
    public static List<Path> children(Path folder) throws IOException {
        List<Path> children = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            for (Path child : stream) {
                if (!child.getFileName().toString().startsWith(".")) {
                    children.add(child);
                }
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        children.sort(BY_NAME);
        return children;
    }

    private static final class Walk {
        private final List<Path> books = new ArrayList<>();
        private final List<FileTrouble> troubles = new ArrayList<>();
        private final Set<Path> seen = new HashSet<>();

        void enter(Path folder, int depth) {
            try {
                Path real = folder.toRealPath();
                if (!seen.add(real)) {
                    return;
                }
                if (depth > DEEPEST) {
                    troubles.add(new FileTrouble(folder, "lies more than " + DEEPEST + " folders deep"));
                    return;
                }
                List<Path> folders = new ArrayList<>();
                for (Path child : children(folder)) {
                    look(child, real, folders);
                }
                for (Path inner : folders) {
                    enter(inner, depth + 1);
                }
            } catch (IOException e) {
                troubles.add(new FileTrouble(folder, Trouble.of(e)));
            }
        }

        private void look(Path child, Path realFolder, List<Path> folders) {
            boolean book = BookFiles.isBook(child);
            try {
                BasicFileAttributes own =
                        Files.readAttributes(child, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
                boolean link = own.isSymbolicLink();
                BasicFileAttributes what = link ? Files.readAttributes(child, BasicFileAttributes.class) : own;
                if (what.isDirectory()) {
                    folders.add(child);
                } else if (book && what.isRegularFile()
                        && seen.add(link ? child.toRealPath() : realFolder.resolve(child.getFileName()))) {
                    books.add(child);
                }
            } catch (IOException e) {
                if (book) {
                    troubles.add(new FileTrouble(child, Trouble.of(e)));
                }
            }
        }
    }
}
