package org.cantonment.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.files.TextReading;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.Document;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.text.LineStarts;
import org.cantonment.notation.text.TextFinding;

/** One file of a desk: where its text comes from, what it was last read as, and what was found in it. */
final class Sheet {
    private final Path file;
    private String text;
    private String trouble;
    private List<Integer> broken = List.of();
    private boolean open;
    private Object readAs;
    private Object meaning;
    private List<TextFinding> form;
    private List<Finding> engine = List.of();
    private List<LocatedFinding> located;

    Sheet(Path file) {
        this.file = file;
    }

    /** The file could be read. Says whether its text is another one than before. */
    boolean read(TextReading reading) {
        boolean other = !reading.text().equals(text);
        text = reading.text();
        broken = reading.broken();
        trouble = null;
        open = false;
        located = null;
        return other;
    }

    /** The file could not be read. @param why the end of a sentence */
    void failed(String why) {
        text = null;
        broken = List.of();
        trouble = why;
        open = false;
        meaning = null;
        readAs = null;
        form = null;
        located = null;
    }

    /** An editor holds the file open with this text. */
    void typed(String now) {
        text = now;
        broken = List.of();
        trouble = null;
        open = true;
    }

    /** The text; null if there is none. */
    String text() {
        return text;
    }

    /** Whether an editor's text stands for the one on the disk. */
    boolean open() {
        return open;
    }

    /**
     * Takes over what the document means now. A meaning equal to the one before is the one before, so that whatever was
     * worked out from it still holds.
     *
     * @return whether the document was read anew since the last time
     */
    boolean take(Document document) {
        // The places are another map after every reading, even where nothing was found before or after.
        if (document.places() == readAs) {
            return false;
        }
        readAs = document.places();
        form = document.findings();
        located = null;
        Object meant = document.meaning(Object.class).orElse(null);
        if (meant == null || !meant.equals(meaning)) {
            meaning = meant;
        }
        return true;
    }

    /** What the file means; null if nothing. */
    Object meaning() {
        return meaning;
    }

    /** What was found in it, placed, if it was placed of these findings since the file was last read; else null. */
    List<LocatedFinding> placedOf(List<Finding> findings) {
        return findings.equals(engine) ? located : null;
    }

    /** Keeps what was found, and placed of these findings. */
    List<LocatedFinding> keep(List<Finding> findings, List<LocatedFinding> now) {
        engine = List.copyOf(findings);
        located = List.copyOf(now);
        return located;
    }

    /** Lets an editor's text stand no longer. */
    void letGo() {
        open = false;
    }

    /** What is wrong with the file and its form. */
    List<LocatedFinding> own(Document document) {
        List<LocatedFinding> findings = new ArrayList<>();
        if (trouble != null) {
            findings.add(LocatedFinding.of(file, Severity.BREACH, CampaignDesk.UNREAD, "This file " + trouble + "."));
            return findings;
        }
        LineStarts lines = document.lines();
        for (int offset : broken) {
            findings.add(LocatedFinding.of(file, lines, new TextFinding(offset, 1, Severity.BREACH, Codes.BYTES,
                    "Here are bytes that are no text in UTF-8; write the sign again and save the file as UTF-8.",
                    Optional.empty(), List.of()), null));
        }
        for (TextFinding finding : form) {
            findings.add(LocatedFinding.of(file, lines, finding, null));
        }
        return findings;
    }
}
