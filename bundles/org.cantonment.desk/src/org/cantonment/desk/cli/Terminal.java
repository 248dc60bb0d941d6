package org.cantonment.desk.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.rules.guest.Guests;

/**
 * Where a call speaks and stands.
 *
 * @param out  for the answer, nothing else
 * @param err  for everything else
 * @param here the folder that relative paths begin at
 * @param guests the checks of others at hand; empty where they cannot be known
 */
public record Terminal(PrintStream out, PrintStream err, Path here, Optional<Guests> guests) {
    /** Where the checks of others cannot be known. */
    public Terminal(PrintStream out, PrintStream err, Path here) {
        this(out, err, here, Optional.empty());
    }

    /** Opens a desk; says how far it is if that takes long. */
    CampaignDesk open(DeskScope scope) {
        return CampaignDesk.open(scope, guests.orElseGet(Guests::new), CancelToken.NEVER, new SlowProgress(this));
    }

    /** Opens a desk on a whole folder. */
    CampaignDesk open(Path folder) {
        return open(DeskScope.all(folder));
    }

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
