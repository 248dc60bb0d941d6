package org.cantonment.desk.files;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** What went wrong with a file, in words. */
final class Trouble {
    private Trouble() {
    }

    /** Says why, as the end of a sentence that began with the file's name. */
    static String of(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "is not there";
        }
        if (e instanceof AccessDeniedException) {
            return "may not be read: no permission";
        }
        if (e instanceof FileSystemLoopException) {
            return "leads back to itself by links";
        }
        if (e instanceof NotDirectoryException) {
            return "is not a folder";
        }
        if (e instanceof DirectoryNotEmptyException) {
            return "is a folder that is not empty";
        }
        if (e instanceof CharacterCodingException) {
            return "has a name that cannot be read here";
        }
        if (e instanceof FileSystemException f && f.getReason() != null) {
            return "could not be read: " + f.getReason();
        }
        String message = e.getMessage();
        return "could not be read" + (message == null ? "" : ": " + message);
    }
}
