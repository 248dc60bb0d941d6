package org.cantonment.editor.model;

import java.util.List;
import java.util.Optional;

import org.cantonment.editor.api.Link;
import org.cantonment.editor.api.OutlineNode;
import org.cantonment.editor.api.StyledRun;

/**
 * What is known about one version of a document. All places are counted in {@link #text()}.
 *
 * @param version the version of the document; -1 before the first
 * @param text the whole text
 * @param findings what is to be said about it, in ascending order of place
 * @param complete whether the findings of those who judge the meaning are among them
 * @param runs the kinds of text that the lexer alone cannot see, ascending
 * @param outline the top-level lines of the outline
 * @param links the uses of names, ascending
 */
public record Snapshot(long version, String text, List<Found> findings, boolean complete, List<StyledRun> runs,
        List<OutlineNode> outline, List<Link> links) {

    /** Nothing known yet. */
    public static final Snapshot NOTHING = new Snapshot(-1, "", List.of(), false, List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Snapshot {
        findings = List.copyOf(findings);
        runs = List.copyOf(runs);
        outline = List.copyOf(outline);
        links = List.copyOf(links);
    }

    /**
     * The same snapshot with all its findings.
     *
     * @param all the findings of the language and of those who judge the meaning
     * @return a complete snapshot of the same version
     */
    public Snapshot completed(List<Found> all) {
        return new Snapshot(version, text, all, true, runs, outline, links);
    }

    /**
     * The use of a name at a place.
     *
     * @param place characters from the start
     * @return the link that covers the place, if there is one
     */
    public Optional<Link> linkAt(int place) {
        return links.stream().filter(link -> link.covers(place)).findFirst();
    }
}
