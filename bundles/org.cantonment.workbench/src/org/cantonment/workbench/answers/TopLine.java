package org.cantonment.workbench.answers;

import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PlatformUI;

/** The line above an answer: what it is, as many lines of text as that takes, and buttons for what can be done with it. */
public final class TopLine {

    private static final int NARROWEST = 120;

    private final Composite line;
    private final Label heading;
    private String said = "";

    /**
     * Makes the line.
     *
     * @param parent an area with a grid layout of one column
     */
    public TopLine(Composite parent) {
        line = new Composite(parent, SWT.NONE);
        line.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        GridLayout layout = new GridLayout(1, false);
        layout.marginHeight = 2;
        layout.marginWidth = 4;
        line.setLayout(layout);
        heading = new Label(line, SWT.WRAP);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = NARROWEST; // or the whole text would be asked for in one line, at the cost of the buttons
        heading.setLayoutData(wide);
    }

    /**
     * Adds a button to the right.
     *
     * @param label its label, with a mnemonic
     * @param tip what it does, in a sentence
     * @param task what it does
     * @return the button
     */
    public Button button(String label, String tip, Runnable task) {
        ((GridLayout) line.getLayout()).numColumns++;
        Button button = new Button(line, SWT.PUSH);
        button.setText(label);
        button.setToolTipText(tip);
        button.setLayoutData(new GridData(SWT.RIGHT, SWT.CENTER, false, false));
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> task.run()));
        return button;
    }

    /**
     * Says what the answer is.
     *
     * @param text in words
     */
    public void say(String text) {
        if (!text.equals(said)) {
            said = text;
            heading.setText(text.replace("&", "&&"));
            heading.setToolTipText(text);
            line.getParent().layout(true, true);
        }
    }

    /** What was said last. */
    public String said() {
        return said;
    }

    /**
     * Lets a button be used or not; it is dressed anew, since a theme colours it by that.
     *
     * @param button one of this line
     * @param use whether
     */
    public void let(Button button, boolean use) {
        if (button.getEnabled() != use) {
            button.setEnabled(use);
            IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
            if (engine != null) {
                engine.applyStyles(button, false);
            }
        }
    }
}
