package org.cantonment.desk.files;

import java.nio.file.Path;
import java.util.Set;

/** Which files are books. */
public final class BookFiles {
    /** The largest file that is read, in bytes: four times the most a book of 200,000 lines has in practice. */
    public static final long MOST_BYTES = 64L << 20;

    private static final Set<String> EXTENSIONS = Set.of("range", "rules", "shelf", "list", "campaign", "week");

    private BookFiles() {
    }

    /**
     * Whether the name ends like a book's.
     *
     * @param file any path; only its last part is looked at
     */
    public static boolean isBook(Path file) {
        return EXTENSIONS.contains(extension(file));
    }

    /** What stands behind the last dot of the name, or nothing if there is none or the name begins with it. */
    public static String extension(Path file) {
        Path last = file.getFileName();
        String name = last == null ? "" : last.toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(dot + 1) : "";
    }

    /** The extensions of books, in the order in which a sentence lists them. */
    public static String spoken() {
        return ".range, .rules, .shelf, .list, .campaign or .week";
    }
}
