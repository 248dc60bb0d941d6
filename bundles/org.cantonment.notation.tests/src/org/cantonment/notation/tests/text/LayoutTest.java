package org.cantonment.notation.tests.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cantonment.notation.text.Layout;
import org.cantonment.notation.text.TextChange;
import org.junit.jupiter.api.Test;

/** The formatter: by lines, for the eye only, and never twice. */
class LayoutTest {

    @Test
    void indentsByDotsAndTidiesBlanks() {
        String text = "list  Mine\tunder Lake  \n\n\n.. Gun-Troop  of 5 ,2   Long-Guns#mine\n    # a remark  \n. X \"a  b\"  as Y\n";
        String tidy = "list Mine under Lake\n\n    .. Gun-Troop of 5, 2 Long-Guns #mine\n    # a remark\n  . X \"a  b\" as Y\n";
        assertEquals(tidy, TextChange.apply(text, Layout.of(text)));
        assertEquals(List.of(), Layout.of(tidy));
    }

    @Test
    void keepsLineEndsAndByteOrderMark() {
        String text = "\uFEFFlist  X\r\n. A\r\n";
        assertEquals("\uFEFFlist X\r\n  . A\r\n", TextChange.apply(text, Layout.of(text)));
    }

    @Test
    void leavesAnUnclosedQuoteAlone() {
        String text = "unit X \"half  a, name\n";
        assertEquals(List.of(), Layout.of(text));
    }
}
