package org.cantonment.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.cantonment.desk.files.BookFiles;
import org.cantonment.desk.files.TextReading;

/**
 * Which books of a folder must be read to answer for some of them. Nothing refers into a list, a shelf or a week; a list
 * is judged by the lists of the same player, and may be one of two that say they are the same; a round may ask whether a
 * shelf can field it. So of the lists only those are read whose first line names what the first line of a list asked about
 * names, and of the shelves likewise, if checks of others may ask about them; all shelves and weeks, if a round or a rule does.
 */
final class Needed {
    /** A round that asks what stands on the table, for which shelves must be known. */
    private static final Pattern TURNOUT = Pattern.compile("^[\\s.]*turnout\\s");
    /** A rule that asks what a player owns. */
    private static final Pattern OWNED = Pattern.compile("\\bpieces\\s+of\\b.*\\s(owned|painted)\\b");

    private final DeskScope scope;
    private final boolean listsOnly;
    private final boolean checks;
    private boolean shelvesAsked;
    private final Map<Path, Set<String>> names = new HashMap<>();
    private final Set<String> asked = new HashSet<>();

    private Needed(DeskScope scope, Set<Path> files, boolean checks) {
        this.scope = scope;
        this.checks = checks;
        this.listsOnly = files.stream().allMatch(Needed::isList);
        files.stream().filter(Needed::isList).forEach(list -> asked.addAll(names(list)));
    }

    /** Those of the books that must be read, in the same order. */
    static List<Path> of(DeskScope scope, List<Path> books) {
        if (scope.asked().isEmpty()) {
            return books;
        }
        Needed needed = new Needed(scope, scope.asked().get(), ChecksAsked.in(books));
        needed.shelvesAsked = books.stream().anyMatch(Needed::asksForShelves);
        List<Path> some = new ArrayList<>();
        for (Path book : books) {
            if (needed.needs(book)) {
                some.add(book);
            }
        }
        return some;
    }

    private boolean needs(Path book) {
        if (scope.asks(book)) {
            return true;
        }
        return switch (BookFiles.extension(book)) {
            case "list" -> !asked.isEmpty() && names(book).stream().anyMatch(asked::contains);
            case "shelf" -> scope.shelves() || !listsOnly || shelvesAsked
                    || checks && names(book).stream().anyMatch(asked::contains);
            case "week" -> scope.shelves() || !listsOnly || shelvesAsked;
            default -> true;
        };
    }

    private static boolean asksForShelves(Path book) {
        return switch (BookFiles.extension(book)) {
            case "campaign" -> says(book, TURNOUT);
            case "rules" -> says(book, OWNED);
            default -> false;
        };
    }

    private static boolean says(Path book, Pattern what) {
        try {
            return TextReading.of(book).text().lines().anyMatch(line -> what.matcher(line).find());
        } catch (IOException e) {
            return false; // told where it is read
        }
    }

    private static boolean isList(Path file) {
        return BookFiles.extension(file).equals("list");
    }

    /** Who and what the first line of a list names before its round, rules and era: its own name, and its player. */
    private Set<String> names(Path list) {
        return names.computeIfAbsent(list, file -> {
            try {
                return named(TextReading.of(file).text());
            } catch (IOException e) {
                return Set.of(); // told where it is read
            }
        });
    }

    private static Set<String> named(String text) {
        Set<String> named = new HashSet<>();
        for (String line : (Iterable<String>) text.lines()::iterator) {
            String bare = line.strip();
            if (!bare.isEmpty() && !bare.startsWith("#")) {
                for (String word : bare.split("[\\s#,]+")) {
                    if (Set.of("under", "in", "to", "round").contains(word)) {
                        break;
                    }
                    named.add(word.toLowerCase(Locale.ROOT));
                }
                named.removeAll(Set.of("list", "by"));
                break;
            }
        }
        return named;
    }
}
