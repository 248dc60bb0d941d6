package org.cantonment.install;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The ways into the product and out again, without a window. */
class InstallTest {

    private static final Path EXAMPLE = Product.ROOT.resolve("examples/lake-club-checks/target");
    private static final Path PLUGIN = EXAMPLE.resolve("lake.club.checks-1.0.0.jar");
    private static final String ZIP = "jar:" + EXAMPLE.resolve("lake.club.checks-1.0.0-site.zip").toUri() + "!/";
    private static final String FINDING = "ombra-1.list:2:1: breach check.ferry-load.too-heavy: Gun-Punt takes 60 of the list's"
            + " 100 points; at most 50 percent may be in one entry.";
    private static final String FEATURE = "lake.club.checks.feature.feature.group";

    @AfterEach
    void tidy() throws IOException {
        Product.delete(Product.WORK.resolve("workspace"));
    }

    /** What Help > Install New Software does, while the product runs: the check is there, and gone again. */
    @Test
    void intoTheRunningProduct() throws IOException, InterruptedException {
        Product product = Product.anew("running");
        assertEquals(List.of("before 0 of 0", "installed 1 of 1", "uninstalled 0 of 0"), product.probe("-site", ZIP));
        assertEquals(List.of("before 0 of 0"), product.probe(), "nor does the next start know it");
    }

    @Test
    void byTheDirectorAndByDropping() throws IOException, InterruptedException {
        Product product = Product.anew("director");
        product.director("-repository", EXAMPLE.resolve("site").toUri().toString(), "-installIU", FEATURE);
        assertEquals(List.of(FINDING), product.check(season()), "the command line asks it");
        product.director("-uninstallIU", FEATURE);
        assertEquals(List.of("before 0 of 0"), product.probe());
        product.drop(PLUGIN);
        assertEquals(List.of("before 1 of 1"), product.probe());
        product.pickUp(PLUGIN);
        assertEquals(List.of("before 0 of 0"), product.probe());
    }

    /** A campaign that asks for the check, and a list that is too heavy for it: 60 of 100 points. */
    private static Path season() throws IOException {
        Path season = Files.createDirectories(Product.WORK.resolve("season"));
        Files.writeString(season.resolve("lake.rules"), """
                rules Lake-Book "The Lake Book"
                unit Gun-Punt "Gun punt"
                  . strength 1 for 60 points
                unit Scout-Punt "Scout punt"
                  . strength 1 for 40 points
                """);
        Files.writeString(season.resolve("heron.campaign"), """
                campaign Heron-Season "The Heron season" from 2031-03-03
                plays Lake-Book
                player Ombra
                check Ferry-Load with Share 50 percent
                round 1 "The cut"
                  . limit 100 points
                """);
        Files.writeString(season.resolve("ombra-1.list"), "list by Ombra round 1\nGun-Punt\nScout-Punt\n");
        return season;
    }

    /** A plug-in made for a later door is refused by name before anything is changed. */
    @Test
    void whatWantsALaterDoorIsRefused() throws IOException, InterruptedException {
        Path site = Product.WORK.resolve("later-site");
        Product.delete(site);
        Product.copy(EXAMPLE.resolve("site"), site);
        Path content = site.resolve("content.xml");
        String door = "name=\"org.cantonment.rules.api\" range=\"[";
        String now = Files.readString(content);
        assertTrue(now.contains(door + "1.0.0,2.0.0)"), now);
        Files.writeString(content, now.replace(door + "1.0.0,2.0.0)", door + "2.0.0,3.0.0)"));
        Product product = Product.anew("later");
        String said = product.refused("-repository", site.toUri().toString(), "-installIU", FEATURE);
        assertTrue(said.contains("java.package; org.cantonment.rules.api [2.0.0,3.0.0)"), said);
        assertEquals(List.of("before 0 of 0"), product.probe());
    }
}
