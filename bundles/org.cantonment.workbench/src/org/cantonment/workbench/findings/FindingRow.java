package org.cantonment.workbench.findings;

import java.util.Objects;

import org.cantonment.editor.api.Rule;
import org.cantonment.editor.api.Severity;
import org.eclipse.core.resources.IFile;

/**
 * One line of the view.
 *
 * @param file the book
 * @param severity how grave it is
 * @param message what is said
 * @param rule the rule that was broken; {@link Rule#NONE} if it is the notation itself
 * @param line the line in the book, from 1
 * @param offset where it begins, in characters from the start of the book
 * @param length how many characters it covers
 */
public record FindingRow(IFile file, Severity severity, String message, Rule rule, int line, int offset,
        int length) {

    /** Refuses nulls. */
    public FindingRow {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(rule, "rule");
    }

    /** The book as a person names it: its folder within the campaign, and its name. */
    public String fileLabel() {
        return file.getProjectRelativePath().toString();
    }

    /** The row as one line of text, its columns parted by tabs. */
    public String asText() {
        return String.join("\t", severity.word(), message, rule.label(), fileLabel(), Integer.toString(line));
    }
}
