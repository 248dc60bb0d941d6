package org.cantonment.notation.ide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.guest.CheckText;
import org.cantonment.rules.guest.KnownCheck;
import org.cantonment.rules.guest.ParameterWords;

/**
 * Help with a campaign's line that turns on a check of others. The grammar knows no names of checks, since they come and go
 * with plug-ins, so whoever asks brings those at hand.
 */
public final class CheckHelp {

    private static final String NAME = "[\\p{L}\\p{N}'-]+";
    private static final Pattern BEFORE_NAME = Pattern.compile("\\s*check\\s+");
    private static final Pattern BEFORE_SETTING = Pattern
            .compile("\\s*check\\s+(?<check>" + NAME + ")\\b.*?\\swith\\s+(?<others>.*,\\s*)?");
    private static final Pattern BEFORE_VALUE = Pattern
            .compile("\\s*check\\s+(?<check>" + NAME + ")\\b.*?\\swith\\s+(?:.*,\\s*)?(?<setting>" + NAME + ")\\s+");
    private static final HumpMatcher HUMPS = new HumpMatcher();

    private CheckHelp() {
    }

    /**
     * What may stand in such a line: names of checks, their settings at their presets, and presets.
     *
     * @param text a book's text
     * @param offset where the cursor stands
     * @param checks those at hand
     * @return nothing if the line is none of these, or the place in it is another one
     */
    public static List<Proposal> proposals(String text, int offset, List<KnownCheck> checks) {
        int start = offset;
        while (start > 0 && NameSigns.isPart(text.charAt(start - 1))) {
            start--;
        }
        String before = text.substring(text.lastIndexOf('\n', Math.max(0, start - 1)) + 1, start);
        Found found = new Found(text.substring(start, offset), start, offset - start, new ArrayList<>());
        Matcher setting = BEFORE_SETTING.matcher(before);
        Matcher value = BEFORE_VALUE.matcher(before);
        if (BEFORE_NAME.matcher(before).matches()) {
            checks.forEach(check -> found.add(check.name(), check.name(), check.label() + ": " + check.about()));
        } else if (setting.matches()) {
            String others = Optional.ofNullable(setting.group("others")).orElse("");
            known(checks, setting.group("check")).ifPresent(check -> check.parameters().stream()
                    .filter(parameter -> !others.matches("(?s)(.*\\W)?" + Pattern.quote(parameter.name()) + "\\s.*"))
                    .forEach(parameter -> found.add(parameter.name(), written(parameter), described(parameter))));
        } else if (value.matches()) {
            known(checks, value.group("check")).flatMap(check -> check.parameter(value.group("setting")))
                    .ifPresent(parameter -> parameter.preset().ifPresent(preset -> found.add(ParameterWords.text(preset),
                            ParameterWords.text(preset), described(parameter))));
        }
        return List.copyOf(found.all());
    }

    private record Found(String typed, int start, int length, List<Proposal> all) {

        void add(String matched, String text, String description) {
            if (HUMPS.isCandidateMatchingPrefix(matched, typed)) {
                all.add(new Proposal(text, description, true, start, length));
            }
        }
    }

    private static Optional<KnownCheck> known(List<KnownCheck> checks, String name) {
        return checks.stream().filter(check -> check.name().equals(name)).findFirst();
    }

    private static String written(Parameter parameter) {
        return parameter.name() + parameter.preset().map(preset -> " " + ParameterWords.text(preset)).orElse("");
    }

    private static String described(Parameter parameter) {
        return parameter.label() + ": " + ParameterWords.takes(parameter) + "; " + ParameterWords.preset(parameter) + ". "
                + parameter.about();
    }

    /**
     * What to say of a word in such a line: the check with all it takes, or one of its settings.
     *
     * @return lines parted by line ends; empty if the word is neither
     */
    public static String hover(String text, int offset, List<KnownCheck> checks) {
        int from = text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1;
        int end = text.indexOf('\n', offset);
        String line = text.substring(from, end < 0 ? text.length() : end);
        Matcher words = Pattern.compile("^\\s*check\\s+(?<check>" + NAME + ")").matcher(line);
        if (offset > text.length() || !words.find()) {
            return "";
        }
        Optional<KnownCheck> check = known(checks, words.group("check"));
        String word = word(line, Math.min(offset - from, line.length()));
        if (word.equals(words.group("check"))) {
            return check.map(known -> String.join("\n", CheckText.lines(known))).orElse("");
        }
        return check.flatMap(known -> known.parameter(word)).map(CheckText::parameter).orElse("");
    }

    private static String word(String line, int at) {
        int start = at;
        int end = at;
        while (start > 0 && NameSigns.isPart(line.charAt(start - 1))) {
            start--;
        }
        while (end < line.length() && NameSigns.isPart(line.charAt(end))) {
            end++;
        }
        return line.substring(start, end);
    }
}
