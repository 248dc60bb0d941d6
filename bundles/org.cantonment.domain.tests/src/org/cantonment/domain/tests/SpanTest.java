package org.cantonment.domain.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cantonment.domain.common.Span;
import org.junit.jupiter.api.Test;

class SpanTest {

    @Test
    void aSpanReadsAsItIsWritten() {
        assertEquals("2", Span.exactly(2).toString());
        assertEquals("2 to 3", Span.of(2, 3).toString());
        assertEquals("at most 3", Span.atMost(3).toString());
        assertEquals("at least 2", Span.atLeast(2).toString());
        assertEquals("0", Span.atMost(0).toString());
    }

    @Test
    void bothEndsAreIncluded() {
        assertFalse(Span.of(2, 3).holds(1));
        assertTrue(Span.of(2, 3).holds(2));
        assertTrue(Span.of(2, 3).holds(3));
        assertFalse(Span.of(2, 3).holds(4));
        assertTrue(Span.atLeast(2).holds(Long.MAX_VALUE));
    }

    @Test
    void aSpanNeverRunsDownwards() {
        assertThrows(IllegalArgumentException.class, () -> Span.of(3, 2));
        assertThrows(IllegalArgumentException.class, () -> Span.of(-1, 2));
    }
}
