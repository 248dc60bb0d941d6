package org.cantonment.workbench.author;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Asks what is to be written where. */
public final class CheckPage extends WizardPage {

    private final Template template;
    private final Optional<Path> sdk;
    private Text id;
    private Text name;
    private Text about;
    private Text parameter;
    private Text maker;
    private Text folder;
    private boolean folderChosen;
    private boolean following;

    CheckPage(Template template, Optional<Path> sdk) {
        super("check", "A check of your own", null);
        this.template = template;
        this.sdk = sdk;
        setDescription("Writes a small Java project that builds with plain Maven and is yours to change.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite all = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(8, 8).numColumns(3).applyTo(all);
        id = text(all, "Plug-in &id:", "lake.club.checks", "Like a Java package: yours, then what it is.");
        name = text(all, "&Name of the check:", "Ferry-Load", "What a campaign writes to ask for it.");
        about = text(all, "What it &checks:", "", "One sentence for the organiser.");
        parameter = text(all, "Name of its &setting:", "Share", "What a campaign may write behind 'with'.");
        maker = text(all, "&Whose it is:", "", "Shown when it is installed: you, or your club.");
        folder = folder(all);
        maker.setText(System.getProperty("user.name", ""));
        id.addModifyListener(typed -> follow());
        name.addModifyListener(typed -> look());
        about.addModifyListener(typed -> look());
        parameter.addModifyListener(typed -> look());
        maker.addModifyListener(typed -> look());
        folder.addModifyListener(typed -> {
            folderChosen |= !following;
            look();
        });
        follow();
        setMessage(null);
        setErrorMessage(null);
        setControl(all);
    }

    private static Text text(Composite parent, String label, String like, String tip) {
        new Label(parent, SWT.NONE).setText(label);
        Text text = new Text(parent, SWT.BORDER | SWT.SINGLE);
        text.setMessage(like);
        text.setToolTipText(tip);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(text);
        return text;
    }

    private Text folder(Composite parent) {
        new Label(parent, SWT.NONE).setText("&Folder:");
        Text text = new Text(parent, SWT.BORDER | SWT.SINGLE);
        text.setToolTipText("New or empty; the project is written into it.");
        GridDataFactory.fillDefaults().grab(true, false).hint(420, SWT.DEFAULT).applyTo(text);
        Button browse = new Button(parent, SWT.PUSH);
        browse.setText("&Browse…");
        browse.addListener(SWT.Selection, pressed -> {
            String chosen = new DirectoryDialog(getShell()).open();
            if (chosen != null) {
                text.setText(chosen);
            }
        });
        return text;
    }

    /** As long as nobody names a folder, it is called as the plug-in is. */
    private void follow() {
        if (!folderChosen) {
            following = true;
            folder.setText(Path.of(System.getProperty("user.home", ""), "cantonment", "plug-ins",
                    id.getText().strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._]", "")).toString());
            following = false;
        }
        look();
    }

    private void look() {
        Optional<String> wrong = complaint();
        setErrorMessage(wrong.orElse(null));
        setPageComplete(wrong.isEmpty());
        if (wrong.isEmpty()) {
            setMessage(sdk.isPresent() ? null
                    : "This installation has no sdk; the build must be told where one lies. The project's page says how.");
        }
    }

    private Optional<String> complaint() {
        return Complaints.ofId(id.getText().strip())
                .or(() -> Complaints.ofName(name.getText().strip(), template))
                .or(() -> Complaints.ofText("What the check checks", about.getText()))
                .or(() -> Complaints.ofParameter(parameter.getText().strip()))
                .or(() -> Complaints.ofText("Whose the check is", maker.getText()))
                .or(() -> Complaints.ofFolder(folder.getText().strip()));
    }

    Answers answers() {
        return new Answers(id.getText().strip(), name.getText().strip(), about.getText().strip(),
                parameter.getText().strip(), maker.getText().strip(), sdk);
    }

    Path chosenFolder() {
        return Path.of(folder.getText().strip()).normalize();
    }
}
