package org.cantonment.desk.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.notation.form.Near;

import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** What a call asks for. */
final class Call {
    private final ParseResult result;

    private Call(ParseResult result) {
        this.result = result;
    }

    /**
     * Understands a call's words.
     *
     * @throws WrongCall if they make no sense; the message says what does
     */
    static Call of(CommandLine words, String... args) {
        try {
            return new Call(words.parseArgs(args));
        } catch (ParameterException e) {
            throw new WrongCall(explain(words, e) + " Try '" + e.getCommandLine().getCommandSpec().qualifiedName(" ")
                    + " --help'.");
        }
    }

    private ParseResult inner() {
        return result.hasSubcommand() ? result.subcommand() : result;
    }

    /** The command's name, or nothing if only the program was called. */
    String command() {
        return result.hasSubcommand() ? inner().commandSpec().name() : "";
    }

    /** The command that is called, to print its help. */
    CommandLine line() {
        return inner().commandSpec().commandLine();
    }

    boolean asksHelp() {
        return inner().isUsageHelpRequested();
    }

    boolean asksVersion() {
        return result.isVersionHelpRequested();
    }

    boolean has(String option) {
        return inner().hasMatchedOption(option);
    }

    Optional<String> value(String option) {
        return Optional.ofNullable(inner().matchedOptionValue(option, (String) null));
    }

    /** All values of an option that may be said several times. */
    List<String> values(String option) {
        String[] values = inner().matchedOptionValue(option, new String[0]);
        return List.of(values);
    }

    /** The words that are no options, in their order. */
    List<String> paths() {
        List<String> paths = new ArrayList<>();
        inner().matchedPositionals().forEach(p -> paths.addAll(p.originalStringValues()));
        return paths;
    }

    private static String explain(CommandLine words, ParameterException e) {
        CommandLine at = e.getCommandLine();
        String name = at.getCommandSpec().qualifiedName(" ");
        if (e instanceof CommandLine.UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
            String word = unmatched.getUnmatched().get(0);
            if (word.startsWith("-")) {
                return "'" + name + "' has no option '" + Plain.line(word) + "'." + meant(word, options(at));
            }
            return at == words ? "There is no command '" + Plain.line(word) + "'."
                    + meant(word, List.copyOf(words.getSubcommands().keySet()))
                    : "'" + name + "' takes no more than one name, so '" + Plain.line(word) + "' is one too many.";
        }
        if (e instanceof CommandLine.MissingParameterException missing) {
            return "'" + name + "' needs " + missing.getMissing().stream().map(Call::label)
                    .reduce((a, b) -> a + " and " + b).orElse("more words") + ".";
        }
        if (e instanceof CommandLine.OverwrittenOptionException) {
            return "'" + name + "' was told the same option twice.";
        }
        return Plain.line(e.getMessage()) + ".";
    }

    private static String label(ArgSpec arg) {
        return arg instanceof OptionSpec option ? "a value behind " + option.longestName() : "a " + arg.paramLabel();
    }

    private static List<String> options(CommandLine line) {
        return line.getCommandSpec().options().stream().map(OptionSpec::longestName).toList();
    }

    private static String meant(String word, List<String> known) {
        return Near.of(word, known).map(near -> " Did you mean '" + near + "'?").orElse("");
    }
}
