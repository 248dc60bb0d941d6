package org.cantonment.notation.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextFinding;
import org.cantonment.notation.text.TextMend;

/** Finds lines with more dots than the line above allows; the parser has read them as deep as they can stand. */
public final class DotCheck {

    private DotCheck() {
    }

    /** @return a finding for each jump, in the order of the text */
    public static List<TextFinding> of(String text) {
        List<TextFinding> found = new ArrayList<>(0);
        int depth = -1;
        int at = 0;
        while (at < text.length()) {
            int start = skipBlanks(text, at);
            int end = lineEnd(text, start);
            if (start < end && text.charAt(start) != '#') {
                int dots = dots(text, start, end);
                int allowed = Math.min(depth + 1, 4);
                if (dots > allowed && depth >= 0) {
                    found.add(jump(start, dots, allowed));
                }
                depth = depth < 0 ? 0 : Math.min(dots, allowed);
            }
            at = end + 1;
        }
        return found;
    }

    private static TextFinding jump(int start, int dots, int allowed) {
        String fewer = ".".repeat(allowed);
        String message = dots > 4 && allowed == 4 ? "Four dots are the most."
                : "No line above has " + (dots - 1) + (dots == 2 ? " dot" : " dots") + "; this is read with " + allowed
                        + ".";
        return new TextFinding(start, dots, Severity.BREACH, Codes.DOTS, message, Optional.empty(),
                List.of(new TextMend("Write " + fewer, List.of(new TextChange(start, dots, fewer)))));
    }

    private static int skipBlanks(String text, int at) {
        int i = at;
        while (i < text.length() && isBlank(text.charAt(i))) {
            i++;
        }
        return i;
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\u00A0' || c == '\uFEFF';
    }

    private static int lineEnd(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) != '\n' && text.charAt(i) != '\r') {
            i++;
        }
        return i;
    }

    private static int dots(String text, int start, int end) {
        int i = start;
        while (i < end && text.charAt(i) == '.') {
            i++;
        }
        return i - start;
    }
}
