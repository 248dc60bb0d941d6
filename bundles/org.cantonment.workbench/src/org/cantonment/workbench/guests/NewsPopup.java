package org.cantonment.workbench.guests;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.notifications.NotificationPopup;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;

/**
 * Shows news of checks in a corner of the screen; it takes no focus and goes by itself. All of it stands in the settings,
 * too.
 */
public final class NewsPopup {

    private static final String PLUGIN = "org.cantonment.workbench";
    /** Checks of one plug-in come one behind another and are told together. */
    private static final int TOGETHER_MILLIS = 600;
    private static final int WIDTH = 340;

    private final Display display;
    private final List<String> waiting = new ArrayList<>();

    private NewsPopup(Display display) {
        this.display = display;
    }

    /** From now on tells what comes, until the display is gone. */
    public static void begin(Display display) {
        NewsPopup popup = new NewsPopup(display);
        News news = new News(GuestHouse.instance().guests(), InstanceScope.INSTANCE.getNode(PLUGIN), popup::tell);
        GuestHouse.instance().guests().onChange(news::look);
    }

    private void tell(List<String> sentences) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (waiting.isEmpty()) {
                    display.timerExec(TOGETHER_MILLIS, this::show);
                }
                waiting.addAll(sentences);
            });
        }
    }

    private void show() {
        String text = String.join("\n", waiting);
        waiting.clear();
        NotificationPopup.forDisplay(display).title("Checks of plug-ins", true).content(parent -> content(parent, text)).open();
    }

    private static Control content(Composite parent, String text) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 6).applyTo(area);
        Label label = new Label(area, SWT.WRAP);
        label.setText(text.replace("&", "&&"));
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(label);
        return area;
    }
}
