package org.cantonment.desk.csv;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which column of a table holds what. A column whose heading is the word of a field holds that field; others are told, and
 * are kept in the shelf as remarks of the form {@code # column "Qty" is count}, so that they are told only once.
 *
 * @param told what was told, by heading
 */
public record Mapping(Map<String, Field> told) {
    private static final Pattern KEPT = Pattern.compile("^\\s*#\\s*column\\s+\"(.*)\"\\s+is\\s+(\\w+)\\s*$");

    /** A mapping makes no sense; the message is a whole sentence for a person. */
    public static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        Wrong(String message) {
            super(message);
        }
    }

    public Mapping {
        told = Map.copyOf(told);
    }

    /** What an earlier import kept in a shelf. */
    public static Mapping kept(String shelf) {
        Map<String, Field> told = new LinkedHashMap<>();
        shelf.lines().forEach(line -> {
            Matcher kept = KEPT.matcher(line);
            if (kept.matches()) {
                Field.of(kept.group(2)).ifPresent(field -> told.put(kept.group(1), field));
            }
        });
        return new Mapping(told);
    }

    /**
     * This, and what is told beside it.
     *
     * @param words each COLUMN=FIELD
     * @throws Wrong if one is not of that form, or names no field
     */
    public Mapping with(List<String> words) throws Wrong {
        Map<String, Field> all = new LinkedHashMap<>(told);
        for (String word : words) {
            int at = word.lastIndexOf('=');
            Optional<Field> field = at < 1 ? Optional.empty() : Field.of(word.substring(at + 1));
            if (field.isEmpty()) {
                throw new Wrong("'" + word + "' maps no column: write COLUMN=FIELD, where FIELD is one of "
                        + String.join(", ", Field.words()) + ".");
            }
            all.put(word.substring(0, at).strip(), field.get());
        }
        return new Mapping(all);
    }

    /**
     * What each column of a table holds; empty for a column that nobody told about.
     *
     * @throws Wrong if a told column is not there, two columns hold the same, or none holds the thing
     */
    public List<Optional<Field>> of(Table table) throws Wrong {
        for (String heading : told.keySet().stream().sorted().toList()) {
            if (table.headings().stream().noneMatch(heading::equalsIgnoreCase)) {
                throw new Wrong("The table has no column '" + heading + "'; it has "
                        + String.join(", ", table.headings()) + ".");
            }
        }
        List<Optional<Field>> fields = new ArrayList<>();
        for (String heading : table.headings()) {
            Optional<Field> field = told.entrySet().stream().filter(one -> one.getKey().equalsIgnoreCase(heading))
                    .map(Map.Entry::getValue).findFirst().or(() -> Field.of(heading));
            if (field.isPresent() && field.get() != Field.NOTHING && fields.contains(field)) {
                throw new Wrong("Two columns hold the " + field.get().word() + "; map one of them to nothing.");
            }
            fields.add(field);
        }
        if (!fields.contains(Optional.of(Field.THING))) {
            throw new Wrong("No column says what lies on the shelf: map one of " + String.join(", ", table.headings())
                    + " to thing, as in --map \"" + table.headings().get(0) + "=thing\".");
        }
        return fields;
    }

    /** The remarks that keep it. */
    public List<String> remarks() {
        return told.entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(one -> "# column \"" + one.getKey() + "\" is " + one.getValue().word()).toList();
    }
}
