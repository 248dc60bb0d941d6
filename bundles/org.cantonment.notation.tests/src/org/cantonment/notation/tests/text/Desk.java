package org.cantonment.notation.tests.text;

import java.nio.file.Path;
import java.util.List;

import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.cantonment.notation.Notation;
import org.cantonment.notation.text.TextFinding;

/** A library with a few texts in it, and words for what was found. */
final class Desk {

    private final Library library = Notation.get().newLibrary();

    Document put(String file, String text) {
        Document document = library.put(Path.of("/desk", file), text);
        library.linkAnew();
        return document;
    }

    Library library() {
        return library;
    }

    /** Each finding as {@code line:column severity code}, counted from 1. */
    static List<String> findings(Document document) {
        return document.findings().stream().map(finding -> where(document, finding) + ' '
                + finding.severity().name().toLowerCase(java.util.Locale.ROOT) + ' ' + finding.code()).toList();
    }

    static String where(Document document, TextFinding finding) {
        return (document.lines().lineOf(finding.offset()) + 1) + ":" + (document.lines().columnOf(finding.offset()) + 1);
    }
}
