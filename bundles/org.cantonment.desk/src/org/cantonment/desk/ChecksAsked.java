package org.cantonment.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;

import org.cantonment.desk.files.BookFiles;
import org.cantonment.desk.files.TextReading;

/** Tells from the text alone, before anything is understood, whether a campaign turns on checks of others. */
public final class ChecksAsked {
    private ChecksAsked() {
    }

    /** Whether one of the books is a campaign with a line that turns on a check, or with one that may become one. */
    public static boolean in(Collection<Path> books) {
        for (Path book : books) {
            if (BookFiles.extension(book).equals("campaign")) {
                try {
                    if (TextReading.of(book).text().lines().anyMatch(line -> line.strip().startsWith("check"))) {
                        return true;
                    }
                } catch (IOException unreadable) {
                    continue; // told where it is read
                }
            }
        }
        return false;
    }
}
