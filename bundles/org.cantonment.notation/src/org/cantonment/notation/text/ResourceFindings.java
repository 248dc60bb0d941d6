package org.cantonment.notation.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.resource.Resource.Diagnostic;
import org.eclipse.xtext.diagnostics.AbstractDiagnostic;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextSyntaxDiagnostic;

/** What the parser and the linker had to say, as findings: one for a line that cannot be read, and no others there. */
public final class ResourceFindings {

    private ResourceFindings() {
    }

    /** @return the findings, in no particular order */
    public static List<TextFinding> of(XtextResource resource, String text, LineStarts lines) {
        List<TextFinding> found = new ArrayList<>(resource.getErrors().size());
        Set<Integer> told = new HashSet<>();
        for (Diagnostic each : List.copyOf(resource.getErrors())) {
            if (each instanceof XtextSyntaxDiagnostic syntax && told.add(line(syntax, lines, text))) {
                found.add(finding(syntax, Severity.BREACH, text));
            }
        }
        Set<Integer> broken = brokenLines(resource, lines);
        for (Diagnostic each : List.copyOf(resource.getErrors())) {
            if (!(each instanceof XtextSyntaxDiagnostic) && each instanceof AbstractDiagnostic other
                    && !broken.contains(line(other, lines, text))) {
                found.add(finding(other, Severity.BREACH, text));
            }
        }
        for (Diagnostic each : List.copyOf(resource.getWarnings())) {
            if (each instanceof AbstractDiagnostic other && !broken.contains(line(other, lines, text))) {
                found.add(finding(other, Severity.NOTE, text));
            }
        }
        return found;
    }

    /** @return the lines, from 0, on which the parser stumbled; a value out of bounds is no stumble */
    public static Set<Integer> brokenLines(XtextResource resource, LineStarts lines) {
        Set<Integer> broken = new HashSet<>();
        for (Diagnostic each : resource.getErrors()) {
            if (each instanceof XtextSyntaxDiagnostic syntax && !isValue(syntax.getCode())) {
                broken.add(lines.lineOf(syntax.getOffset()));
            }
        }
        return broken;
    }

    private static boolean isValue(String code) {
        return Codes.NUMBER_RANGE.equals(code) || Codes.QUOTE.equals(code);
    }

    private static int line(AbstractDiagnostic diagnostic, LineStarts lines, String text) {
        return lines.lineOf(Math.min(diagnostic.getOffset(), text.length()));
    }

    /** An empty place is widened to the character before it on its line, so that it can be seen. */
    private static TextFinding finding(AbstractDiagnostic diagnostic, Severity severity, String text) {
        int offset = Math.min(diagnostic.getOffset(), text.length());
        int end = Math.min(text.length(), offset + diagnostic.getLength());
        if (end == offset) {
            boolean after = offset > 0 && text.charAt(offset - 1) != '\n' && text.charAt(offset - 1) != '\r';
            offset = after ? offset - 1 : offset;
            end = Math.min(text.length(), offset + 1);
        }
        if (Codes.LINE.equals(diagnostic.getCode())) {
            offset = firstWord(text, offset);
            end = wordEnd(text, offset);
        }
        String[] data = diagnostic.getData();
        return new TextFinding(offset, end - offset, severity, diagnostic.getCode(), diagnostic.getMessage(),
                Optional.empty(), mends(data, offset, end, text));
    }

    /** A line that nobody knows is known by its first word, wherever the parser gave up. */
    private static int firstWord(String text, int offset) {
        int at = offset;
        while (at > 0 && text.charAt(at - 1) != '\n' && text.charAt(at - 1) != '\r') {
            at--;
        }
        while (at < offset && (text.charAt(at) == '.' || Character.isWhitespace(text.charAt(at))
                || text.charAt(at) == '\uFEFF')) {
            at++;
        }
        return at;
    }

    private static int wordEnd(String text, int offset) {
        int end = offset;
        while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        return Math.max(end, Math.min(text.length(), offset + 1));
    }

    /** The data of a diagnostic are the word as typed and the one to put instead, or several to choose from. */
    private static List<TextMend> mends(String[] data, int offset, int end, String text) {
        if (data == null || data.length < 2) {
            return List.of();
        }
        String typed = data[0];
        if (typed.indexOf('/') > 0 && !text.startsWith(typed, offset)) {
            List<TextMend> choices = new ArrayList<>();
            for (String each : data) {
                choices.add(new TextMend("Write " + each, List.of(new TextChange(offset, end - offset, each))));
            }
            return choices;
        }
        int lineStart = Math.max(text.lastIndexOf('\n', Math.max(0, offset - 1)), text.lastIndexOf('\r',
                Math.max(0, offset - 1))) + 1;
        int at = text.startsWith(typed, offset) ? offset : text.indexOf(typed, lineStart);
        boolean writable = at >= 0 && at <= end;
        String instead = data[1];
        return writable ? List.of(new TextMend("Write " + instead,
                List.of(new TextChange(at, typed.length(), instead)))) : List.of();
    }
}
