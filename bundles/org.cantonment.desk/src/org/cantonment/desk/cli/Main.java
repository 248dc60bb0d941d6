package org.cantonment.desk.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.rules.guest.Guests;

import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The command line. */
public final class Main {
    private Main() {
    }

    /** Runs one call and ends the program with its exit code. */
    public static void main(String[] args) {
        System.exit(run(args, Optional.empty()));
    }

    /**
     * Runs one call on the program's own streams and in its own folder.
     *
     * @param guests the checks of others at hand; empty where they cannot be known
     * @return the exit code
     */
    public static int run(String[] args, Optional<Guests> guests) {
        Quiet.libraries();
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        int code = run(args, new Terminal(out, err, Path.of("").toAbsolutePath(), guests));
        out.flush();
        err.flush();
        return code;
    }

    /**
     * Runs one call. Never throws for what a user can bring about; what nobody foresaw is written to a log file and said
     * in one sentence.
     *
     * @param args     the words of the call
     * @param terminal where to answer
     * @return 0 if nothing breaks a rule, 1 if something does, 2 if the call is wrong or something cannot be read
     */
    public static int run(String[] args, Terminal terminal) {
        try {
            int code = dispatch(args, terminal);
            terminal.out().flush();
            return terminal.out().checkError() ? Exit.WRONG : code;
        } catch (WrongCall e) {
            terminal.out().flush();
            terminal.say(Words.NAME + ": " + e.getMessage());
            return Exit.WRONG;
        } catch (OutOfMemoryError e) {
            terminal.say(Words.NAME + ": there is not enough memory for this; check fewer files at a time.");
            return Exit.WRONG;
        } catch (RuntimeException | Error e) {
            Optional<Path> log = ErrorLog.note(e, args);
            terminal.say(Words.NAME + ": something went wrong that is no fault of yours"
                    + log.map(file -> "; what happened stands in " + file).orElse("") + ".");
            return Exit.WRONG;
        }
    }

    private static int dispatch(String[] args, Terminal terminal) {
        WarmUp.begin(args);
        CommandLine words = Words.all();
        Call call = Call.of(words, args);
        if (call.asksVersion()) {
            terminal.answer("Cantonment " + Version.TEXT);
            return Exit.FINE;
        }
        if (call.asksHelp()) {
            terminal.answer(call.line().getUsageMessage(Ansi.OFF).replace(System.lineSeparator(), "\n").stripTrailing());
            return Exit.FINE;
        }
        OptionalInt elsewhere = new HandOver(terminal, call).run(args);
        if (elsewhere.isPresent()) {
            return elsewhere.getAsInt();
        }
        return switch (call.command()) {
            case "check" -> new CheckCommand(terminal).run(call.paths(), call.has("--json"));
            case "points" -> new PointsCommand(terminal).run(call.paths());
            case "format" -> new FormatCommand(terminal).run(call.paths(), call.has("--check"));
            case "roundup" -> new RoundupCommand(terminal).run(call.paths().get(0), call.value("--on"));
            case "adopt" -> new AdoptCommand(terminal).run(call.paths(), call.has("--json"));
            case "eras" -> new ErasCommand(terminal).run(call);
            case "checks" -> new ChecksCommand(terminal).run(call.paths().stream().findFirst(), call.has("--json"),
                    call.has("--reference"));
            case "turnout" -> new TurnoutCommand(terminal).run(call);
            case "reach" -> new ReachCommand(terminal, call).run();
            case "shelf" -> new ShelfCommand(terminal).run(call);
            case "worth" -> new WorthCommand(terminal, call).run();
            case "buy" -> new BuyCommand(terminal, call).run();
            case "grow" -> new GrowCommand(terminal, call).run();
            default -> throw new WrongCall("Say what is to be done: check, points, eras, turnout, reach, shelf, worth, buy,"
                    + " grow, adopt, checks, format or roundup. Try '"
                    + Words.NAME + " --help'.");
        };
    }

    // Answers are UTF-8 wherever they go, so that a file or pipe holds the same on every machine; only a Windows console
    // has a code page of its own.
    private static PrintStream stream(FileDescriptor to) {
        String console = System.getProperty("os.name", "").startsWith("Windows") && System.console() != null
                ? System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding")) : null;
        Charset charset = console != null && Charset.isSupported(console)
                ? Charset.forName(console) : StandardCharsets.UTF_8;
        return new PrintStream(new FileOutputStream(to), false, charset);
    }
}
