package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;

import org.cantonment.editor.api.TextKind;
import org.cantonment.editor.api.TokenNames;
import org.cantonment.workbench.check.Lines;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.Document;
import org.junit.jupiter.api.Test;

/** The parts that need no window. */
class PlainPartsTest {

    private static final long SEED = 20310415;
    private static final String LETTERS = "ab\n";

    /** The platform's own document is the witness; it counts from 0. */
    @Test
    void linesAreCountedAsThePlatformCountsThem() throws BadLocationException {
        Random random = new Random(SEED);
        for (int i = 0; i < 300; i++) {
            String text = text(random, 30).replace("a", i % 2 == 0 ? "\r\n" : "\r");
            Document document = new Document(text);
            Lines lines = new Lines(text);
            for (int offset = 0; offset <= text.length(); offset++) {
                assertEquals(document.getLineOfOffset(offset) + 1, lines.numberAt(offset),
                        "offset " + offset + " in " + text.replace("\r", "\\r").replace("\n", "\\n"));
            }
        }
    }

    @Test
    void tokenNamesSuggestTheirKind() {
        assertEquals(TextKind.KEYWORD, TokenNames.kindOf("'unit'"));
        assertEquals(TextKind.SIGN, TokenNames.kindOf("','"));
        assertEquals(TextKind.REMARK, TokenNames.kindOf("RULE_COMMENT"));
        assertEquals(TextKind.NUMBER, TokenNames.kindOf("RULE_DECIMAL"));
        assertEquals(TextKind.QUOTED, TokenNames.kindOf("RULE_STRING"));
        assertEquals(TextKind.NAME, TokenNames.kindOf("RULE_ID"));
        assertEquals(TextKind.PLAIN, TokenNames.kindOf("RULE_OTHER"));
    }

    private static String text(Random random, int longest) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(longest); i > 0; i--) {
            text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return text.toString();
    }
}
