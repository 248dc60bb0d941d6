package org.cantonment.domain.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.cantonment.domain.common.Id;
import org.junit.jupiter.api.Test;

class IdTest {

    @Test
    void anIdKnowsItsBookItsNameAndItsCard() {
        Id line = Id.of("Lake-Book/Gun-Troop/Long-Guns#12");
        assertEquals("Lake-Book", line.book());
        assertEquals("Long-Guns", line.name());
        assertEquals(Id.of("Lake-Book/Gun-Troop/Long-Guns"), line.card());
        assertEquals("Anna", Id.of("Anna/4#7").book());
        assertEquals("4", Id.of("Anna/4#7").name());
        assertEquals("Season", Id.of("Season#1").book());
        assertEquals("Season", Id.of("Season#1").name());
        assertEquals(line, Id.of("Lake-Book", "Gun-Troop").child("Long-Guns").line(12));
    }

    @Test
    void idsStandInTheOrderOfTheirNumbers() {
        List<Id> ordered = List.of(Id.of("A"), Id.of("A#2"), Id.of("A#9"), Id.of("A#10"), Id.of("A#010"), Id.of("A/1"),
                Id.of("A/1#3"), Id.of("A/12"), Id.of("B"));
        List<Id> shuffled = new ArrayList<>(ordered);
        Collections.shuffle(shuffled, new Random(7));
        Collections.sort(shuffled);
        assertEquals(Id.of("A"), shuffled.get(0));
        assertEquals(List.of("A#2", "A#9"), List.of(shuffled.get(1).text(), shuffled.get(2).text()));
        assertEquals(List.of("A/1", "A/1#3", "A/12", "B"), shuffled.subList(5, 9).stream().map(Id::text).toList());
    }

    @Test
    void theOrderAgreesWithEquality() {
        Random random = new Random(11);
        String signs = "A/#019";
        List<Id> ids = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            StringBuilder text = new StringBuilder();
            for (int c = 0; c < 1 + random.nextInt(5); c++) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            ids.add(Id.of(text.toString()));
        }
        for (Id a : ids) {
            for (Id b : ids) {
                assertEquals(a.equals(b), a.compareTo(b) == 0, a + " " + b);
                assertEquals(Integer.signum(a.compareTo(b)), -Integer.signum(b.compareTo(a)));
                for (Id c : ids.subList(0, 20)) {
                    assertEquals(false, a.compareTo(b) < 0 && b.compareTo(c) < 0 && a.compareTo(c) >= 0);
                }
            }
        }
    }

    @Test
    void anIdIsNeverEmpty() {
        assertThrows(IllegalArgumentException.class, () -> Id.of(""));
    }
}
