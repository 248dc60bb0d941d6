package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.workbench.author.Answers;
import org.cantonment.workbench.author.Bundled;
import org.cantonment.workbench.author.CheckWizard;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.Screen;
import org.cantonment.workbench.tests.driver.Widgets;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** File > New > Check of your own. */
class CheckWizardTest {

    private static final Path EXAMPLE = Path.of(System.getProperty("cantonment.example"));
    private static final String ABOUT = "No list may hold more than its fill of eels.";
    private static final String ID = "pier.eels";

    @TempDir
    Path home;

    private WizardDialog dialog;

    @AfterEach
    void tidy() throws CoreException {
        if (dialog != null && dialog.getShell() != null) {
            dialog.close();
        }
        Campaign.page().closeAllEditors(false);
        IProject made = ResourcesPlugin.getWorkspace().getRoot().getProject(ID);
        if (made.exists()) {
            made.delete(false, true, null);
        }
        Screen.idle();
    }

    /** The expectation is made without the template: the example's files as they lie in the project, name for name. */
    @Test
    void theProjectIsTheExampleWithOtherNames() throws IOException {
        Path folder = home.resolve("eels");
        open();
        fill(ID, "Eel-Count", ABOUT, "Fill", "The pier", folder.toString());
        Screen.until("nothing is wrong", () -> finish().isEnabled());
        Screen.picture("wizard-light");
        finish().notifyListeners(SWT.Selection, null);
        Screen.until("the dialog has gone", () -> dialog.getShell() == null || dialog.getShell().isDisposed());

        Map<String, String> expected = new TreeMap<>();
        String sdk = Bundled.sdk().map(p -> p.toString()).orElse("${project.basedir}/../..");
        read(EXAMPLE).forEach((path, text) -> expected.put(other(path), other(text).replace(
                "<cantonment.sdk>${project.basedir}/../..<", "<cantonment.sdk>" + sdk + "<")));
        Map<String, String> written = read(folder);
        assertEquals(List.copyOf(expected.keySet()), List.copyOf(written.keySet()));
        expected.forEach((path, text) -> assertEquals(text, written.get(path), path));
        assertTrue(written.get("src/main/java/pier/eels/EelCount.java").contains("class EelCount implements RuleCheck"));

        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(ID);
        assertEquals(folder.toRealPath(), project.getLocation().toPath().toRealPath());
        assertEquals("README.md", Campaign.page().getActiveEditor().getTitle());
    }

    private static String other(String text) {
        return text.replace("No entry of a list may weigh more than its part of the points.", ABOUT)
                .replace("The lake club", "The pier").replace("lake.club.checks", ID).replace("lake/club/checks", "pier/eels")
                .replace("FerryLoad", "EelCount").replace("Ferry-Load", "Eel-Count").replace("Ferry load", "Eel count")
                .replace("ferry-load", "eel-count").replaceAll("\\bShare\\b", "Fill").replaceAll("\\bSHARE\\b", "FILL");
    }

    @Test
    void whatCannotBeIsSaidAtOnce() throws IOException {
        Path taken = Files.createDirectory(home.resolve("taken"));
        Files.writeString(taken.resolve("shopping.txt"), "Eels.");
        open();
        String free = home.resolve("free").toString();
        says("at least two parts", "eels", "Eel-Count", ABOUT, "Fill", "The pier", free);
        says("'Eels' does not", "pier.Eels", "Eel-Count", ABOUT, "Fill", "The pier", free);
        says("'new' is a word of Java", "pier.new", "Eel-Count", ABOUT, "Fill", "The pier", free);
        says("belong to somebody else", "org.cantonment.eels", "Eel-Count", ABOUT, "Fill", "The pier", free);
        says("62 letters; 60 is the most", "pier." + "e".repeat(57), "Eel-Count", ABOUT, "Fill", "The pier", free);
        says("begins with a capital", ID, "eel-count", ABOUT, "Fill", "The pier", free);
        says("would be called Entry", ID, "Entry", ABOUT, "Fill", "The pier", free);
        says("would be called String", ID, "String", ABOUT, "Fill", "The pier", free);
        says("What the check checks is missing", ID, "Eel-Count", " ", "Fill", "The pier", free);
        says("cannot hold */", ID, "Eel-Count", "Eels */ ends", "Fill", "The pier", free);
        says("The setting's name is one word", ID, "Eel-Count", ABOUT, "Fill it", "The pier", free);
        says("Whose the check is is missing", ID, "Eel-Count", ABOUT, "Fill", "", free);
        says("the whole path", ID, "Eel-Count", ABOUT, "Fill", "The pier", "free");
        says("something in " + taken, ID, "Eel-Count", ABOUT, "Fill", "The pier", taken.toString());
        says("shopping.txt is no folder", ID, "Eel-Count", ABOUT, "Fill", "The pier",
                taken.resolve("shopping.txt/eels").toString());
        assertFalse(Files.exists(home.resolve("free")));
    }

    @Test
    void everyFieldIsReachedByKeyboardInTheOrderItIsAsked() {
        open();
        List<Text> fields = fields();
        fields.get(0).setFocus();
        for (int i = 1; i < fields.size(); i++) {
            Text next = fields.get(i);
            Display.getCurrent().getFocusControl().traverse(SWT.TRAVERSE_TAB_NEXT);
            Screen.until("field " + i + " has the caret", () -> Display.getCurrent().getFocusControl() == next);
        }
    }

    @Test
    void freeTextStaysTextInEveryFile() throws IOException {
        Map<String, String> files = Bundled.template().fill(new Answers(ID, "Eel-Count", "At most \"9\" eels & <no> Share \\u.",
                "Fill", "Ombra & Brack", Optional.empty()));
        assertTrue(files.get("src/main/java/pier/eels/EelCount.java")
                .contains("return \"At most \\\"9\\\" eels & <no> Share \\\\u.\";"));
        assertTrue(files.get("src/site/feature.xml")
                .contains("<description>At most &quot;9&quot; eels &amp; &lt;no&gt; Share \\u.</description>"));
        assertTrue(files.get("pom.xml").contains("<name>Ombra &amp; Brack</name>"));
    }

    private void says(String part, String... answers) {
        fill(answers);
        String message = ((WizardPage) dialog.getCurrentPage()).getErrorMessage();
        assertTrue(message != null && message.contains(part), part + " is not said: " + message);
        assertFalse(finish().isEnabled(), part);
    }

    private void open() {
        IWorkbench workbench = PlatformUI.getWorkbench();
        try {
            IWorkbenchWizard wizard = workbench.getNewWizardRegistry().findWizard(CheckWizard.ID).createWizard();
            wizard.init(workbench, StructuredSelection.EMPTY);
            dialog = new WizardDialog(workbench.getActiveWorkbenchWindow().getShell(), (IWizard) wizard);
        } catch (CoreException none) {
            throw new IllegalStateException(none);
        }
        dialog.setBlockOnOpen(false);
        dialog.open();
        Screen.until("the dialog is there", () -> dialog.getShell().isVisible());
    }

    private List<Text> fields() {
        return Widgets.all(Text.class, dialog.getShell(), text -> (text.getStyle() & SWT.READ_ONLY) == 0);
    }

    private void fill(String... answers) {
        List<Text> fields = fields();
        assertEquals(answers.length, fields.size());
        for (int i = 0; i < answers.length; i++) {
            fields.get(i).setText(answers[i]);
        }
    }

    private Button finish() {
        return Widgets.first(Button.class, dialog.getShell(), b -> b.getText().equals(IDialogConstants.FINISH_LABEL));
    }

    /** All that belongs to a project: no folder of a build, nothing of a tool's own. */
    private static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (var all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String path = folder.relativize(file).toString().replace('\\', '/');
                if (!path.startsWith("target/") && !path.startsWith(".")) {
                    files.put(path, Files.readString(file));
                }
            }
        }
        return files;
    }
}
