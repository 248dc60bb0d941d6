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
            Button button = new Button(line, SWT.CHECK);
            button.setImage(images.get(Icons.severity(severity)));
            button.setSelection(true);
            button.setLayoutData(new GridData(SWT.RIGHT, SWT.CENTER, false, false));
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(
                    event -> ask.accept(present.get().with(severity, button.getSelection()))));
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
        boolean wider = false;
        for (Map.Entry<Severity, Button> entry : switches.entrySet()) {
            long count = all.stream().filter(row -> row.severity() == entry.getKey()).count();
            String label = count == 1 ? "1 " + entry.getKey().word() : count + " " + plural(entry.getKey());
            if (!label.equals(entry.getValue().getText())) {
                entry.getValue().setText(label);
                entry.getValue().setToolTipText("Show or hide: " + plural(entry.getKey()).toLowerCase(Locale.ROOT));
                wider = true;
            }
        }
        if (wider) {
            words.getParent().requestLayout();
        }
    }

    private static String plural(Severity severity) {
        return severity == Severity.BREACH ? "Breaches" : severity.word() + "s";
    }
}
