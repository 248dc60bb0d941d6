package org.cantonment.desk.tests;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.cli.Main;
import org.cantonment.desk.cli.Terminal;
import org.cantonment.rules.guest.Guests;

/**
 * One call of the command line and what came of it.
 *
 * @param code the exit code
 * @param out  the answer
 * @param err  what was said beside it
 */
record Shell(int code, String out, String err) {
    /** Calls the command line in a folder. */
    static Shell in(Path folder, String... args) {
        return in(folder, Optional.empty(), args);
    }

    /** Calls the command line in a folder, with checks of others at hand or not known. */
    static Shell in(Path folder, Optional<Guests> guests, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(args, new Terminal(new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8), folder, guests));
        return new Shell(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The lines of the answer. */
    List<String> lines() {
        return out.lines().toList();
    }
}
