package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.cantonment.workbench.check.CampaignNature;
import org.cantonment.workbench.check.FindingMarkers;
import org.cantonment.workbench.opening.CampaignFolder;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bringing a folder of books onto the workbench. */
class OpeningTest {

    @TempDir
    Path folder;

    @Test
    void theBooksStayWhereTheyAreAndAreChecked() throws IOException, CoreException {
        Campaign.page().closeAllEditors(false);
        Files.writeString(folder.resolve("lake.rules"), Campaign.RULES);
        Files.writeString(folder.resolve("heron.campaign"), Campaign.SEASON);
        Files.createDirectory(folder.resolve("round 4"));
        Files.writeString(folder.resolve("round 4/brack.list"), "list by Brack round 4\nNo-Such-Unit\n");
        Files.writeString(folder.resolve("round 4/ayre.list"), Campaign.LIST);
        Files.writeString(folder.resolve("readme.txt"), "No book.");
        IProject project = CampaignFolder.open(folder, null);
        try {
            Screen.idle();
            assertTrue(project.hasNature(CampaignNature.ID));
            assertEquals(folder.toRealPath(), project.getLocation().toPath().toRealPath());
            assertEquals("round 4/brack.list",
                    CampaignFolder.first(project).get().getProjectRelativePath().toString(), "the one with a breach");
            assertTrue(project.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE).length > 0);
            assertSame(project, CampaignFolder.open(folder, null), "opened twice it is one project");
        } finally {
            project.delete(false, true, null);
            Screen.idle();
        }
        assertTrue(Files.exists(folder.resolve("lake.rules")));
    }

    @Test
    void aFolderThatIsNotThereIsSaidSo() {
        Path nowhere = folder.resolve("nowhere");
        CoreException refused = assertThrows(CoreException.class, () -> CampaignFolder.open(nowhere, null));
        assertEquals("There is no folder " + nowhere, refused.getStatus().getMessage());
    }

    @Test
    void aFolderWithoutBooksHasNoFirst() throws CoreException {
        IProject project = CampaignFolder.open(folder, null);
        try {
            assertFalse(CampaignFolder.first(project).isPresent());
        } finally {
            project.delete(false, true, null);
            Screen.idle();
        }
    }
}
