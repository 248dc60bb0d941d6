package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

import org.cantonment.desk.ChecksAsked;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.files.FolderScan;

/**
 * Hands a call over to the product where checks of others have a say: they are services of OSGi, which is not here. The
 * product runs the same command with the same words; only the start takes longer.
 */
final class HandOver {
    private static final long QUIET_MILLIS = 1_000;

    private final Terminal terminal;
    private final Call call;

    HandOver(Terminal terminal, Call call) {
        this.terminal = terminal;
        this.call = call;
    }

    /**
     * Runs the call in the product, if it must run there and there is a product.
     *
     * @param args the words of the call
     * @return its exit code; empty if the call is to be answered here
     */
    OptionalInt run(String[] args) {
        if (terminal.guests().isPresent() || !concernsChecks()) {
            return OptionalInt.empty();
        }
        return Product.here().map(product -> start(product, args)).orElse(OptionalInt.empty());
    }

    private boolean concernsChecks() {
        return switch (call.command()) {
            case "checks" -> true;
            case "check", "roundup" -> turnedOn(call.paths());
            case "eras" -> call.paths().stream().allMatch(path -> path.endsWith(".list")) && turnedOn(call.paths());
            case "adopt" -> turnedOn(call.paths().subList(1, call.paths().size()));
            default -> false;
        };
    }

    private boolean turnedOn(List<String> words) {
        try {
            Paths paths = new Paths(terminal);
            List<Path> existing = words.stream().map(paths::existing).toList();
            return Targets.of(existing).stream().map(DeskScope::place).anyMatch(place -> ChecksAsked.in(
                    Files.isDirectory(place) ? FolderScan.of(place).books() : List.of(place)));
        } catch (WrongCall told) {
            return false; // by the command itself
        }
    }

    private OptionalInt start(Product product, String[] args) {
        terminal.out().flush();
        try (Product.Run run = product.run(args, terminal.here())) {
            if (!run.process().waitFor(QUIET_MILLIS, TimeUnit.MILLISECONDS)) {
                terminal.say("Starting the product, to ask the checks of plug-ins.");
            }
            int code = run.process().waitFor();
            if (code >= Exit.FINE && code <= Exit.WRONG) {
                return OptionalInt.of(code);
            }
        } catch (IOException failed) {
            ErrorLog.note(failed, args);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(Exit.WRONG);
        }
        terminal.say(Words.NAME + ": the product could not be started, so the checks of plug-ins are not asked.");
        return OptionalInt.empty();
    }
}
