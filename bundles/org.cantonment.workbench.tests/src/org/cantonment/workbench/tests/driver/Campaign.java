package org.cantonment.workbench.tests.driver;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;

import org.cantonment.editor.text.LanguageEditor;
import org.cantonment.workbench.check.CampaignNature;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;

/** A small campaign in the workspace, written anew for every test. */
public final class Campaign {

    /** A rule set of our own invention. */
    public static final String RULES = """
            rules Lake-Book "The Lake Book"

            side Weir "Weir League"
            era Reed-Year "The Reed Year"
            era Dyke-War "The Dyke War" after Reed-Year
            kind Armour "Armour"
            kind Scouting "Eyes"

            ## Two in front, one behind.
            unit Staff "Squadron staff"
              . strength 1 for 10 points
            unit Tread-Troop "Tread troop"
              . is Armour
              . strength 3 for 24 points
              . strength 5 for 40 points
              . option Long-Guns "Long guns", at most 2, for 2 points each
            unit Crank-Troop "Crank troop"
              . is Armour
              . strength 4 for 20 points
            unit Marsh-Scouts "Marsh scouts"
              . is Scouting
              . strength 1 for 8 points

            formation Causey-Squadron "Causey squadron"
              . billet Command 1 of Staff
              . billet Line 2 to 3 of Tread-Troop, Crank-Troop
              . billet Scouts 0 to 1 of Scouting
            """;

    /** A list that has nothing wrong with it. */
    public static final String LIST = """
            list by Ombra round 4        # the first of the summer

            Causey-Squadron as Herons "The Herons"
              . Command: Staff
              . Tread-Troop of 5, 2 Long-Guns as Reds "The Reds"
              . 2 Crank-Troop of 4
              . Marsh-Scouts
            """;

    /** A campaign of two players. */
    public static final String SEASON = """
            campaign Heron-Season "The Heron season" from 2031-03-03
            plays Lake-Book
            player Ombra
            player Brack
            round 4 "The causeway"
              . era Dyke-War
              . limit 120 points
            """;

    private final IProject project;

    private Campaign(IProject project) {
        this.project = project;
    }

    /**
     * Closes all editors without saving and writes the campaign anew.
     *
     * @return the campaign: lake.rules, ombra-4.list and heron.campaign
     */
    public static Campaign anew() {
        page().closeAllEditors(false);
        Screen.idle();
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject("Heron season");
        Campaign campaign = new Campaign(project);
        try {
            if (!project.exists()) {
                project.create(null);
                project.open(null);
                IProjectDescription description = project.getDescription();
                description.setNatureIds(new String[] { CampaignNature.ID });
                project.setDescription(description, null);
            }
            for (var member : project.members()) {
                if (member instanceof IFile file && !file.getName().startsWith(".")) {
                    file.delete(true, null);
                }
            }
        } catch (CoreException refused) {
            throw new IllegalStateException(refused);
        }
        campaign.write("lake.rules", RULES);
        campaign.write("ombra-4.list", LIST);
        campaign.write("heron.campaign", SEASON);
        Screen.idle();
        return campaign;
    }

    /** The project. */
    public IProject project() {
        return project;
    }

    /**
     * A file of the campaign.
     *
     * @param name its name
     * @return the file, which may not exist
     */
    public IFile file(String name) {
        return project.getFile(name);
    }

    /**
     * What a file holds on the disk.
     *
     * @param name its name in the folder
     * @return its text
     */
    public String text(String name) {
        try {
            return Files.readString(file(name).getLocation().toFile().toPath());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * Writes a file to the disk, as another program would through the workspace.
     *
     * @param name its name
     * @param text what it holds from now on
     */
    public void write(String name, String text) {
        try {
            file(name).write(text.getBytes(StandardCharsets.UTF_8), true, false, false, null);
        } catch (CoreException refused) {
            throw new IllegalStateException(refused);
        }
    }

    /**
     * Opens a book and waits until it is examined.
     *
     * @param name its name
     * @return its editor
     */
    public OpenBook open(String name) {
        try {
            IEditorPart editor = IDE.openEditor(page(), file(name));
            OpenBook book = new OpenBook((LanguageEditor) editor);
            Screen.idle();
            return book;
        } catch (PartInitException refused) {
            throw new IllegalStateException(refused);
        }
    }

    /** The page of the window. */
    public static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    }
}
