package org.cantonment.workbench.author;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The example's project, from which others are made by putting other names in the place of its own.
 *
 * <p>The example is the only source: whatever is changed in it is in the next project that somebody makes.
 */
public final class Template {

    private static final Answers EXAMPLE = new Answers("lake.club.checks", "Ferry-Load",
            "No entry of a list may weigh more than its part of the points.", "Share", "The lake club",
            Optional.empty());
    private static final String OPEN = "<cantonment.sdk>";
    private static final String CLOSE = "</cantonment.sdk>";
    private static final String SDK = OPEN + "${project.basedir}/../.." + CLOSE;
    /** Where the example's own names stand: some anywhere, those that are plain words only as whole words. */
    private static final Pattern NAMES = Pattern.compile(Stream.of(SDK, EXAMPLE.about(), EXAMPLE.maker(), EXAMPLE.id(),
            EXAMPLE.packageFolder(), EXAMPLE.name(), EXAMPLE.label(), EXAMPLE.code()).map(Pattern::quote)
            .collect(Collectors.joining("|", "", "|")) + "\\b(?:" + EXAMPLE.parameter() + '|' + EXAMPLE.constant()
            + ")\\b|\\b" + EXAMPLE.className() + "(?=\\b|Test)");
    private static final Pattern IMPORT = Pattern.compile("(?m)^import (?:static )?[\\w.]*?\\.(\\w+);$");

    private final Map<String, String> files;

    /** @param files the example's files: their text by their path from the project's folder, with slashes */
    public Template(Map<String, String> files) {
        this.files = new TreeMap<>(files);
    }

    /** Whether the example's own classes know a class by this simple name already. */
    boolean names(String className) {
        if (inJavaLang(className)) {
            return true;
        }
        for (String text : files.values()) {
            Matcher found = IMPORT.matcher(text);
            while (found.find()) {
                if (found.group(1).equals(className)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean inJavaLang(String className) {
        try {
            Class.forName("java.lang." + className, false, null);
            return true;
        } catch (ClassNotFoundException none) {
            return false;
        }
    }

    /**
     * The project with other names.
     *
     * @param answers answers that {@link Complaints} has nothing to say about
     * @return the text of each file by its path from the project's folder
     */
    public Map<String, String> fill(Answers answers) {
        Map<String, String> filled = new TreeMap<>();
        files.forEach((path, text) -> filled.put(names(path, answers, UnaryOperator.identity()),
                names(text, answers, writing(path))));
        return filled;
    }

    /** How free text is written in a file so that it stays text. */
    private static UnaryOperator<String> writing(String path) {
        if (path.endsWith(".java")) {
            return text -> text.replace("\\", "\\\\").replace("\"", "\\\"");
        }
        if (path.endsWith(".xml")) {
            return text -> text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;")
                    .replace("$", "&#36;"); // else the build would take it for one of its variables
        }
        return UnaryOperator.identity();
    }

    /** All names at once, so that an answer that holds one of the example's names stays as it is. */
    private static String names(String text, Answers answers, UnaryOperator<String> writing) {
        Map<String, String> instead = Map.ofEntries(
                Map.entry(EXAMPLE.about(), writing.apply(answers.about())),
                Map.entry(EXAMPLE.maker(), writing.apply(answers.maker())),
                Map.entry(EXAMPLE.id(), answers.id()),
                Map.entry(EXAMPLE.packageFolder(), answers.packageFolder()),
                Map.entry(EXAMPLE.name(), answers.name()),
                Map.entry(EXAMPLE.label(), answers.label()),
                Map.entry(EXAMPLE.code(), answers.code()),
                Map.entry(EXAMPLE.className(), answers.className()),
                Map.entry(EXAMPLE.parameter(), answers.parameter()),
                Map.entry(EXAMPLE.constant(), answers.constant()),
                Map.entry(SDK, answers.sdk().map(p -> OPEN + writing.apply(slashed(p)) + CLOSE).orElse(SDK)));
        return NAMES.matcher(text).replaceAll(found -> Matcher.quoteReplacement(instead.get(found.group())));
    }

    private static String slashed(Path path) {
        String text = path.toString().replace('\\', '/');
        return text.startsWith("/") ? text : '/' + text; // file:///C:/…
    }

    /**
     * Writes a project.
     *
     * @param folder a folder that is new or empty
     * @param answers answers that {@link Complaints} has nothing to say about
     * @throws IOException if it cannot be written
     */
    public void write(Path folder, Answers answers) throws IOException {
        for (Map.Entry<String, String> file : fill(answers).entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }
}
