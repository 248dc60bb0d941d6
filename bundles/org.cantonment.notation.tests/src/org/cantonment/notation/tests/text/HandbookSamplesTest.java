package org.cantonment.notation.tests.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cantonment.notation.Document;
import org.cantonment.notation.Notation;
import org.cantonment.notation.text.TextFinding;
import org.cantonment.testkit.Project;
import org.junit.jupiter.api.Test;

/** Every sample in docs/notation.md is a book, or part of one, that can be read; names it leaves out are not held against it. */
class HandbookSamplesTest {

    private static final Pattern SAMPLE = Pattern.compile("```\n(.*?)```", Pattern.DOTALL);
    private static final Set<String> LEFT_OUT = Set.of("name.unknown");

    @Test
    void everySampleReads() throws IOException {
        Path notation = Project.file("docs/notation.md");
        Matcher matcher = SAMPLE.matcher(Files.readString(notation));
        List<String> wrong = new ArrayList<>();
        int samples = 0;
        while (matcher.find()) {
            samples++;
            String text = matcher.group(1);
            String word = text.split("\\s", 2)[0];
            boolean book = Notation.isBook("x." + word);
            Document document = new Desk().put("sample" + samples + '.' + (book ? word : "rules"),
                    book ? text : "rules Winter over Lake-Book\n" + text);
            for (TextFinding finding : document.findings()) {
                if (!LEFT_OUT.contains(finding.code())) {
                    wrong.add("sample " + samples + " " + Desk.where(document, finding) + " " + finding.code() + ": "
                            + finding.message());
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(samples >= 7, "only " + samples + " samples");
    }
}
