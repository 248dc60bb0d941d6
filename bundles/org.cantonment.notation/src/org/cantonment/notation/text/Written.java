package org.cantonment.notation.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A change of the text that is part of a mend.
 *
 * @param rank among those that are put in at one place, the smallest stands first
 */
record Written(TextChange change, int rank) {

    private static final Pattern SUPPORT = Pattern.compile("^[ .]*support\\R");
    private static final Pattern LINE_END = Pattern.compile("^\\R");

    /** What is put in at one place becomes one change, in the order of the actions; what is added may have parts. */
    static List<TextChange> together(List<Written> written) {
        Map<Integer, TextChange> inserts = new LinkedHashMap<>();
        List<TextChange> others = new ArrayList<>();
        for (Written some : written.stream().sorted(Comparator.comparingInt(Written::rank)).toList()) {
            TextChange change = some.change();
            if (change.length() > 0) {
                others.add(change);
            } else {
                inserts.merge(change.offset(), change,
                        (first, then) -> new TextChange(first.offset(), 0, joined(first.text(), then.text())));
            }
        }
        others.addAll(inserts.values());
        return others;
    }

    /** One heading is enough for all supports that come to one place, and one end for a last line that had none. */
    private static String joined(String first, String then) {
        Matcher end = LINE_END.matcher(then);
        String line = end.find() ? then.substring(end.end()) : then;
        Matcher heading = SUPPORT.matcher(line);
        return heading.find() && first.contains(heading.group()) ? first + line.substring(heading.end()) : first + line;
    }
}
