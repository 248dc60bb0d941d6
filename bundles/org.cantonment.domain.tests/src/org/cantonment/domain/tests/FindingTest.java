package org.cantonment.domain.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.junit.jupiter.api.Test;

class FindingTest {

    private static Finding finding(Severity severity, String at, String code, String rule) {
        return new Finding(code, severity, Id.of(at), Optional.ofNullable(rule).map(Id::of), "Words.", List.of());
    }

    @Test
    void theGravestComesFirstThenPlaceThenCodeThenRule() {
        List<Finding> ordered = List.of(finding(Severity.BREACH, "L#2", "b", null),
                finding(Severity.BREACH, "L#10", "a", null), finding(Severity.BREACH, "L#10", "b", "R#1"),
                finding(Severity.BREACH, "L#10", "b", "R#2"), finding(Severity.CAUTION, "L#1", "a", null),
                finding(Severity.NOTE, "L", "a", null));
        for (int seed = 0; seed < 20; seed++) {
            List<Finding> shuffled = new ArrayList<>(ordered);
            Collections.shuffle(shuffled, new Random(seed));
            Collections.sort(shuffled);
            assertEquals(ordered, shuffled);
        }
    }
}
