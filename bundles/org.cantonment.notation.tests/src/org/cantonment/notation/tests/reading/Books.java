package org.cantonment.notation.tests.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.cantonment.notation.Notation;
import org.cantonment.notation.text.LineStarts;
import org.cantonment.notation.text.TextFinding;

/** Some books of one folder, read from their texts. */
final class Books {

    private static final Path FOLDER = Path.of("desk").toAbsolutePath();

    private final Library library = Notation.get().newLibrary();

    private Books() {
    }

    /** @param texts the text of each file by its name */
    static Books read(Map<String, String> texts) {
        Books books = new Books();
        new TreeMap<>(texts).forEach((name, text) -> books.library.put(FOLDER.resolve(name), text));
        books.library.linkAnew();
        return books;
    }

    /** One file alone. */
    static Books read(String file, String text) {
        return read(Map.of(file, text));
    }

    <T> T meaning(String file, Class<T> type) {
        return document(file).meaning(type).orElseThrow();
    }

    /** @return each finding of the file as "line code text", the line counted from 1, the text that which it is about */
    List<String> findings(String file) {
        Document document = document(file);
        LineStarts lines = new LineStarts(document.text());
        return document.findings().stream().map(finding -> lines.lineOf(finding.offset()) + 1 + " " + finding.code()
                + " " + about(document, finding)).toList();
    }

    /** @return the one finding of the file */
    TextFinding finding(String file) {
        List<TextFinding> all = document(file).findings();
        assertEquals(1, all.size(), all::toString);
        return all.get(0);
    }

    /** @return the text of the file after the first mend of its one finding */
    String mended(String file) {
        StringBuilder text = new StringBuilder(document(file).text());
        finding(file).mends().get(0).changes().forEach(
                change -> text.replace(change.offset(), change.offset() + change.length(), change.text()));
        return text.toString();
    }

    /** @return whether the id has a place in the file */
    boolean places(String file, String id) {
        return document(file).places().containsKey(Id.of(id));
    }

    private static String about(Document document, TextFinding finding) {
        return document.text().substring(finding.offset(), finding.offset() + finding.length()).strip();
    }

    private Document document(String file) {
        return library.document(FOLDER.resolve(file)).orElseThrow();
    }
}
