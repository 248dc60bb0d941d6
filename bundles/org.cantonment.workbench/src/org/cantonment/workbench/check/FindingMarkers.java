package org.cantonment.workbench.check;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Rule;
import org.cantonment.editor.api.Severity;
import org.cantonment.workbench.notation.Books;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;

/** Findings as problem markers. Markers that still hold are left alone. */
public final class FindingMarkers {

    /** The marker type. */
    public static final String TYPE = "org.cantonment.workbench.finding";
    /** Attribute: the finding's code. */
    public static final String CODE = "code";
    /** Attribute: the name of the rule that was broken; empty if it is the notation itself. */
    public static final String RULE = "rule";
    /** Attribute: the file in which the rule stands, as a URI; empty if it stands in none. */
    public static final String RULE_FILE = "ruleFile";
    /** Attribute: the line of the rule, from 1; 0 if it stands in no file. */
    public static final String RULE_LINE = "ruleLine";

    private FindingMarkers() {
    }

    /**
     * Makes the markers of a project say what was found.
     *
     * @param project an open project
     * @param findings the findings of each book; a book that is not named has none
     * @throws CoreException if the markers cannot be changed
     */
    public static void show(IProject project, Map<IFile, List<Finding>> findings) throws CoreException {
        for (IFile book : Books.below(project)) {
            show(book, findings.getOrDefault(book, List.of()));
        }
    }

    /**
     * Removes all findings of a project.
     *
     * @param project an open project
     * @throws CoreException if the markers cannot be changed
     */
    public static void clear(IProject project) throws CoreException {
        project.deleteMarkers(TYPE, true, IResource.DEPTH_INFINITE);
    }

    private static void show(IFile book, List<Finding> findings) throws CoreException {
        Map<Map<String, Object>, Deque<IMarker>> held = new HashMap<>();
        for (IMarker marker : book.findMarkers(TYPE, true, IResource.DEPTH_ZERO)) {
            Map<String, Object> attributes = marker.getAttributes();
            held.computeIfAbsent(attributes == null ? Map.of() : attributes, key -> new ArrayDeque<>()).add(marker);
        }
        Lines lines = findings.isEmpty() ? null : Lines.of(book);
        for (Finding finding : findings) {
            Map<String, Object> wanted = attributes(finding, lines);
            Deque<IMarker> same = held.get(wanted);
            if (same != null && !same.isEmpty()) {
                same.removeFirst();
            } else {
                book.createMarker(TYPE, wanted);
            }
        }
        for (Deque<IMarker> stale : held.values()) {
            for (IMarker marker : stale) {
                marker.delete();
            }
        }
    }

    private static Map<String, Object> attributes(Finding finding, Lines lines) {
        Map<String, Object> attributes = new HashMap<>();
        attributes.put(IMarker.SEVERITY, severity(finding.severity()));
        attributes.put(IMarker.MESSAGE, finding.message());
        attributes.put(IMarker.LINE_NUMBER, lines.numberAt(finding.offset()));
        attributes.put(IMarker.CHAR_START, finding.offset());
        attributes.put(IMarker.CHAR_END, finding.offset() + finding.length());
        attributes.put(CODE, finding.code());
        attributes.put(RULE, finding.rule().name());
        attributes.put(RULE_FILE, finding.rule().uri());
        attributes.put(RULE_LINE, finding.rule().line());
        return attributes;
    }

    private static int severity(Severity severity) {
        return switch (severity) {
            case BREACH -> IMarker.SEVERITY_ERROR;
            case CAUTION -> IMarker.SEVERITY_WARNING;
            case NOTE -> IMarker.SEVERITY_INFO;
        };
    }

    /**
     * The rule that a marker was made of.
     *
     * @param marker a marker of our type
     * @return its rule
     */
    public static Rule rule(IMarker marker) {
        return new Rule(marker.getAttribute(RULE, ""), marker.getAttribute(RULE_FILE, ""),
                marker.getAttribute(RULE_LINE, 0));
    }

    /**
     * The severity that a marker was made of.
     *
     * @param marker a marker of our type
     * @return its severity
     */
    public static Severity severity(IMarker marker) {
        return switch (marker.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO)) {
            case IMarker.SEVERITY_ERROR -> Severity.BREACH;
            case IMarker.SEVERITY_WARNING -> Severity.CAUTION;
            default -> Severity.NOTE;
        };
    }
}
