package org.cantonment.desk.cli;

import java.io.PrintStream;
import java.nio.file.Path;

/**
 * Where a call speaks and stands.
 *
 * @param out  for the answer, nothing else
 * @param err  for everything else
 * @param here the folder that relative paths begin at
 */
public record Terminal(PrintStream out, PrintStream err, Path here) {
    /** Prints a line of the answer, ended the same way on every system. */
    void answer(String line) {
        out.print(line);
        out.print('\n');
    }

    /** Says something beside the answer. */
    void say(String line) {
        err.print(line);
        err.print('\n');
        err.flush();
    }

    /** A path as the call meant it. */
    Path resolve(String path) {
        return here.resolve(path).normalize();
    }

    /** A path as a person here would write it: below this folder without the folder's name, with slashes. */
    String show(Path path) {
        Path shown = path.startsWith(here) ? here.relativize(path) : path;
        String text = shown.toString().replace('\\', '/');
        return Plain.line(text.isEmpty() ? "." : text);
    }
}
