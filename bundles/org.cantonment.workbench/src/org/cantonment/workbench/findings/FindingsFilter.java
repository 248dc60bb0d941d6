package org.cantonment.workbench.findings;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.cantonment.editor.api.Severity;
import org.cantonment.workbench.Icons;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** The line above the table: a field for words, and a switch with a count for each severity. */
final class FindingsFilter {

    private final Text words;
    private final Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
    private final Map<Severity, Button> switches = new EnumMap<>(Severity.class);

    FindingsFilter(Composite parent, Supplier<FindingQuery> present, Consumer<FindingQuery> ask, Runnable leave) {
        Composite line = new Composite(parent, SWT.NONE);
        line.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        GridLayout layout = new GridLayout(1 + Severity.values().length, false);
        layout.marginHeight = 2;
        layout.marginWidth = 4;
        layout.horizontalSpacing = 12;
        line.setLayout(layout);
        words = new Text(line, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL | SWT.BORDER);
        words.setMessage("Words to look for");
        words.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        words.addModifyListener(event -> ask.accept(present.get().withWords(words.getText())));
        words.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ARROW_DOWN) {
                leave.run();
            }
        }));
        ResourceManager images = new LocalResourceManager(JFaceResources.getResources(), line);
        for (Severity severity : Severity.values()) {
            Button button = new Button(line, SWT.TOGGLE);
            button.setImage(images.get(Icons.severity(severity)));
            button.setSelection(true);
            button.setLayoutData(new GridData(SWT.RIGHT, SWT.CENTER, false, false));
            button.setToolTipText("Show or hide: " + plural(severity).toLowerCase(Locale.ROOT));
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
                label(severity);
                ask.accept(present.get().with(severity, button.getSelection()));
            }));
            switches.put(severity, button);
        }
        count(List.of());
    }

    void setFocus() {
        words.setFocus();
    }

    Text words() {
        return words;
    }

    Button switchOf(Severity severity) {
        return switches.get(severity);
    }

    /** Shows how many there are of each severity, shown or not. */
    void count(List<FindingRow> all) {
        for (Severity severity : switches.keySet()) {
            counts.put(severity, (int) all.stream().filter(row -> row.severity() == severity).count());
            label(severity);
        }
    }

    /** Whether it is pressed is said in words too: not every theme draws it. */
    private void label(Severity severity) {
        Button button = switches.get(severity);
        int count = counts.getOrDefault(severity, 0);
        String label = (count == 1 ? "1 " + severity.word() : count + " " + plural(severity))
                + (button.getSelection() ? "" : ", hidden");
        if (!label.equals(button.getText())) {
            button.setText(label);
            button.requestLayout();
        }
    }

    private static String plural(Severity severity) {
        return severity == Severity.BREACH ? "Breaches" : severity.word() + "s";
    }
}
