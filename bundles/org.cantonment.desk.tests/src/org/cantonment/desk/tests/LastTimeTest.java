package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of turnouts as full and as true, the one that is as it was last time. Who stands where was worked out by hand. */
class LastTimeTest {
    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        book("works.range", """
                range Works
                family Wagons
                piece Blue in Wagons
                piece Red in Wagons
                piece White in Wagons
                """);
        book("pond.rules", """
                rules Pond "The pond book"
                unit Troop "Troop"
                  . strength 2 for 8 points
                  . each needs Wagons
                unit Red-Guard "Red guard"
                  . strength 2 for 8 points
                  . each needs Red
                unit White-Guard "White guard"
                  . strength 2 for 8 points
                  . each needs White
                """);
        book("season.campaign", "campaign Season\nplays Pond\nplayer Ombra\nround 1\nround 2\nround 3\n"
                + "veteran Hawks of Ombra is Troop\n");
        book("ombra.shelf", "shelf of Ombra\n2 Blue\n2 Red\n2 White\n");
        book("ombra-1.list", "list by Ombra round 1\nRed-Guard\nTroop\nTroop as Hawks \"Hawks\"\n");
    }

    private void book(String name, String text) {
        Folders.write(folder.resolve(name), text);
    }

    private List<String> places(String list) {
        return Shell.in(folder, "turnout", list).lines().stream().filter(line -> line.startsWith("  ")).toList();
    }

    @Test
    void aUnitKeepsWhatItHad() {
        assertEquals(List.of("  Red guard: 2 Red", "  Troop: 2 Blue", "  Hawks: 2 White"), places("ombra-1.list"));
        book("ombra-2.list", "list by Ombra round 2\nTroop as Hawks \"Hawks\"\nTroop\n");
        assertEquals(List.of("  Hawks: 2 White", "  Troop: 2 Blue"), places("ombra-2.list"));
        book("ombra-1.list", "list by Ombra round 1\nRed-Guard\nTroop as Hawks \"Hawks\"\nTroop\n");
        assertEquals(List.of("  Red guard: 2 Red", "  Hawks: 2 Blue", "  Troop: 2 White"), places("ombra-1.list"));
        assertEquals(List.of("  Hawks: 2 Blue", "  Troop: 2 White"), places("ombra-2.list"));
    }

    @Test
    void whoStayedAtHomeOnceIsRememberedFromTheRoundBefore() {
        book("ombra-2.list", "list by Ombra round 2\nTroop\n");
        book("ombra-3.list", "list by Ombra round 3\nTroop as Hawks \"Hawks\"\nTroop\n");
        assertEquals(List.of("  Troop: 2 Blue"), places("ombra-2.list"));
        assertEquals(List.of("  Hawks: 2 White", "  Troop: 2 Blue"), places("ombra-3.list"));
    }

    @Test
    void whatIsFullerOrTruerGoesBefore() {
        book("ombra.shelf", "shelf of Ombra\n2 Red\n2 White\n");
        book("ombra-1.list", "list by Ombra round 1\nTroop as Hawks \"Hawks\"\nWhite-Guard\n");
        assertEquals(List.of("  Hawks: 2 Red", "  White guard: 2 White"), places("ombra-1.list"));
        book("ombra-2.list", "list by Ombra round 2\nTroop as Hawks \"Hawks\"\nRed-Guard\n");
        assertEquals(List.of("  Hawks: 2 White", "  Red guard: 2 Red"), places("ombra-2.list"));
    }

    @Test
    void aUnitMayKeepAPartOfIt() {
        book("ombra.shelf", "shelf of Ombra\n1 Red\n4 White\n");
        book("ombra-1.list", "list by Ombra round 1\nWhite-Guard\nTroop\nTroop as Hawks \"Hawks\"\n");
        List<String> first = places("ombra-1.list");
        book("ombra-2.list", "list by Ombra round 2\nTroop as Hawks \"Hawks\"\nTroop\n");
        assertEquals(List.of(first.get(2), first.get(1)), places("ombra-2.list"));
    }
}
