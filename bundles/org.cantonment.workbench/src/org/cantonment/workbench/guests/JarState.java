package org.cantonment.workbench.guests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * What tells one state of a jar from another.
 *
 * @param size in bytes
 * @param changed in milliseconds since 1970
 */
record JarState(long size, long changed) {

    /** @return null if the file is gone or is no file */
    static JarState of(Path jar) {
        try {
            BasicFileAttributes now = Files.readAttributes(jar, BasicFileAttributes.class);
            return now.isRegularFile() ? new JarState(now.size(), now.lastModifiedTime().toMillis()) : null;
        } catch (IOException gone) {
            return null;
        }
    }
}
