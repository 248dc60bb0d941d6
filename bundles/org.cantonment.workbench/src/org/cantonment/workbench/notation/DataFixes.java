package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Fix;
import org.cantonment.editor.api.TextChange;
import org.cantonment.notation.form.Codes;

/** Mends that the notation's own findings carry as words: what was written, and what would do. */
final class DataFixes {

    /** Codes whose data is the word as written and the word that would do. */
    private static final Set<String> SWAPS = Set.of(Codes.UNKNOWN, Codes.CAPITAL, Codes.LINE);

    private DataFixes() {
    }

    static List<Fix> of(Finding finding, String text) {
        List<String> data = finding.data();
        List<Fix> fixes = new ArrayList<>();
        if (Codes.AMBIGUOUS.equals(finding.code())) {
            data.forEach(full -> add(fixes, finding.offset(), finding.length(), full, text));
        } else if (SWAPS.contains(finding.code()) && data.size() == 2) {
            int at = text.indexOf(data.get(0), finding.offset());
            if (at >= 0 && at <= finding.offset() + finding.length()) {
                add(fixes, at, data.get(0).length(), data.get(1), text);
            }
        }
        return fixes;
    }

    private static void add(List<Fix> fixes, int offset, int length, String word, String text) {
        if (!text.startsWith(word, offset) || length != word.length()) {
            fixes.add(new Fix("Write '" + word + "'", List.of(new TextChange(offset, length, word))));
        }
    }
}
