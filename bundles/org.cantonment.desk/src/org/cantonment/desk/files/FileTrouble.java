package org.cantonment.desk.files;

import java.nio.file.Path;

/**
 * A file or folder that could not be read.
 *
 * @param path what was asked for
 * @param why  one sentence for a person, without the path and without a full stop
 */
public record FileTrouble(Path path, String why) {
}
