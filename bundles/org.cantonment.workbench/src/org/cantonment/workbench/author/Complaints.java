package org.cantonment.workbench.author;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import javax.lang.model.SourceVersion;

/** What is wrong with an answer, in a sentence that says what would be right; empty if nothing is. */
public final class Complaints {

    private static final Pattern SEGMENT = Pattern.compile("[a-z][a-z0-9_]*");
    private static final Pattern NAME = Pattern.compile("[A-Z][A-Za-z0-9]*(-[A-Za-z0-9]+)*");
    private static final int LONGEST = 60;
    private static final Set<String> TAKEN = Set.of("java", "javax", "org.cantonment", "org.eclipse", "org.osgi");

    private Complaints() {
    }

    /** About a plug-in's id. */
    public static Optional<String> ofId(String id) {
        String[] segments = id.split("\\.", -1);
        if (segments.length < 2) {
            return Optional.of("The plug-in's id has at least two parts with a dot between: yours, then what it is, as in"
                    + " lake.club.checks.");
        }
        for (String segment : segments) {
            if (!SEGMENT.matcher(segment).matches()) {
                return Optional.of("Each part of the plug-in's id begins with a small letter and goes on with small letters,"
                        + " digits or underscores; '" + segment + "' does not.");
            }
            if (SourceVersion.isKeyword(segment)) {
                return Optional.of("'" + segment + "' is a word of Java and cannot be a part of the plug-in's id.");
            }
        }
        if (TAKEN.stream().anyMatch(t -> id.equals(t) || id.startsWith(t + '.'))) {
            return Optional.of("Ids that begin like " + id + " belong to somebody else; begin yours with your own name.");
        }
        return tooLong("The plug-in's id", id);
    }

    /** About a check's name. */
    public static Optional<String> ofName(String name, Template template) {
        Optional<String> wrong = ofWord("The check's name", name, "Ferry-Load");
        if (wrong.isPresent()) {
            return wrong;
        }
        String className = name.replace("-", "");
        return template.names(className)
                ? Optional.of("The check's class would be called " + className
                        + ", and so is one that it uses; choose a name of two words.")
                : Optional.empty();
    }

    /** About the name of a setting. */
    public static Optional<String> ofParameter(String parameter) {
        return ofWord("The setting's name", parameter, "Share");
    }

    private static Optional<String> ofWord(String what, String word, String like) {
        return NAME.matcher(word).matches() ? tooLong(what, word)
                : Optional.of(what + " is one word that begins with a capital, parts joined by hyphens, without accents: "
                        + like + ".");
    }

    /** About a text on one line that must say something. */
    public static Optional<String> ofText(String what, String text) {
        if (text.isBlank()) {
            return Optional.of(what + " is missing.");
        }
        if (text.contains("*/")) {
            return Optional.of(what + " cannot hold */, which would end a remark of Java.");
        }
        return text.chars().anyMatch(Character::isISOControl) ? Optional.of(what + " stands on one line.")
                : Optional.empty();
    }

    private static Optional<String> tooLong(String what, String text) {
        return text.length() <= LONGEST ? Optional.empty()
                : Optional.of(what + " has " + text.length() + " letters; " + LONGEST + " is the most.");
    }

    /** About the folder that the project is written to. */
    public static Optional<String> ofFolder(String folder) {
        Path path;
        try {
            path = Path.of(folder);
        } catch (InvalidPathException senseless) {
            return Optional.of("This names no folder: " + folder);
        }
        if (folder.isBlank() || !path.isAbsolute()) {
            return Optional.of("Say the whole path of the folder that the project is written to.");
        }
        if (Files.isDirectory(path)) {
            return filled(path) ? Optional.of("There is something in " + path + " already; name a new folder or an empty one.")
                    : Optional.empty();
        }
        Path there = path;
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        if (there == null || !Files.isDirectory(there)) {
            return Optional.of((there == null ? path : there) + " is no folder.");
        }
        return Files.isWritable(there) ? Optional.empty() : Optional.of("Nothing can be written to " + there + ".");
    }

    private static boolean filled(Path folder) {
        try (var entries = Files.list(folder)) {
            return entries.findAny().isPresent();
        } catch (IOException unreadable) {
            return true; // what cannot be looked into is left alone
        }
    }
}
