package org.cantonment.rules.guest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;

/** A check in words, as terminals, hovers and the handbook show it: all of it made of what the check declares. */
public final class CheckText {
    private CheckText() {
    }

    /** A few lines of plain text, the first with the check's name. */
    public static List<String> lines(KnownCheck check) {
        List<String> lines = new ArrayList<>();
        lines.add(check.name() + " (" + check.label() + "): " + check.about());
        lines.add("  from " + check.origin().words());
        check.shutOut().ifPresent(how -> lines.add("  is shut out until the next start: it " + how + '.'));
        check.parameters().forEach(parameter -> lines.add("  with " + parameter(parameter)));
        check.findings().forEach(kind -> lines.add("  finds " + severity(kind) + ' ' + check.shown(kind) + ": "
                + kind.about()));
        return lines;
    }

    /** "Share (Painted share): a number of percent from 0 to 100; 50 percent if nothing is written. How much …". */
    public static String parameter(Parameter parameter) {
        return parameter.name() + " (" + parameter.label() + "): " + ParameterWords.takes(parameter) + "; "
                + ParameterWords.preset(parameter) + ". " + parameter.about();
    }

    /** A line of a campaign that turns the check on, with every setting at its preset or its least value. */
    public static String use(KnownCheck check) {
        String settings = check.parameters().stream().map(CheckText::example).collect(Collectors.joining(", "));
        return "check " + check.name() + (settings.isEmpty() ? "" : " with " + settings);
    }

    private static String example(Parameter parameter) {
        return parameter.name() + ' ' + parameter.preset().or(parameter::least).map(ParameterWords::text)
                .orElse(switch (parameter.sort()) {
                    case COUNT, NUMBER -> "1";
                    case PERCENT -> "50 percent";
                    case TEXT -> "\"text\"";
                    case DATE -> "2031-04-15";
                    case YES_NO -> "yes";
                    case NAME -> "Name";
                });
    }

    /** The check's page in a handbook, in Markdown. */
    public static List<String> reference(KnownCheck check) {
        List<String> lines = new ArrayList<>();
        lines.add("## `" + check.name() + "`: " + cell(check.label()));
        lines.add("");
        lines.add(cell(check.about()));
        lines.add("");
        lines.add("    " + use(check));
        lines.add("");
        lines.add("From " + check.origin().words() + ".");
        if (!check.parameters().isEmpty()) {
            lines.addAll(List.of("", "| setting | takes | if nothing is written | means |", "| --- | --- | --- | --- |"));
            check.parameters().forEach(parameter -> lines.add("| `" + parameter.name() + "` | "
                    + cell(ParameterWords.takes(parameter)) + " | "
                    + cell(parameter.preset().map(ParameterWords::text).orElse("it must be written")) + " | "
                    + cell(parameter.label() + ": " + parameter.about()) + " |"));
        }
        lines.addAll(List.of("", "| code | usually | means |", "| --- | --- | --- |"));
        check.findings().forEach(kind -> lines.add("| `" + check.shown(kind) + "` | " + severity(kind) + " | "
                + cell(kind.about()) + " |"));
        return lines;
    }

    private static String severity(FindingKind kind) {
        return kind.severity().name().toLowerCase(Locale.ROOT);
    }

    private static String cell(String text) {
        return text.replaceAll("\\s+", " ").replace("|", "\\|").strip();
    }
}
