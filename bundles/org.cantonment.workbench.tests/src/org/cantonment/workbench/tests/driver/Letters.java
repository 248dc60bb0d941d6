package org.cantonment.workbench.tests.driver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** The letters in the window as they are painted, whatever colours the widgets claim to have. */
public final class Letters {

    private static final int ROWS = 4;

    /**
     * A text in the window.
     *
     * @param what which widget, and what it says
     * @param ground how light its ground is, which is what most pixels are: from 0 for black to 1 for white
     * @param contrast between the ground and what stands out most from it
     */
    public record Seen(String what, double ground, double contrast) {
    }

    private final Shell shell;
    private final ImageData shot;
    private final List<Seen> seen = new ArrayList<>();

    private Letters(Shell shell) {
        this.shell = shell;
        this.shot = Screen.shot();
    }

    /**
     * Looks at the labels, buttons, and first rows of trees and tables that can be seen, those at rest and in use.
     *
     * @return what was seen
     */
    public static List<Seen> inTheWindow() {
        Letters letters = new Letters(Campaign.page().getWorkbenchWindow().getShell());
        Widgets.all(Control.class, letters.shell, control -> control.isVisible() && control.isEnabled())
                .forEach(letters::look);
        return letters.seen;
    }

    private void look(Control control) {
        if (control instanceof Tree tree) {
            rows(Arrays.asList(tree.getItems())).filter(item -> !Arrays.asList(tree.getSelection()).contains(item))
                    .forEach(item -> add(tree, item.getText(), item.getTextBounds(0)));
        } else if (control instanceof Table table) {
            Arrays.stream(table.getItems()).limit(ROWS).filter(item -> !table.isSelected(table.indexOf(item)))
                    .forEach(item -> add(table, item.getText(), item.getTextBounds(0)));
        } else {
            String text = control instanceof Label label ? label.getText() : control instanceof CLabel label
                    ? label.getText() : control instanceof Button button ? button.getText() : "";
            add(control, text, new Rectangle(2, 2, control.getSize().x - 4, control.getSize().y - 4));
        }
    }

    private static Stream<TreeItem> rows(List<TreeItem> items) {
        return items.stream().flatMap(item -> Stream.concat(Stream.of(item),
                item.getExpanded() ? rows(Arrays.asList(item.getItems())) : Stream.empty())).limit(ROWS);
    }

    private void add(Control control, String text, Rectangle within) {
        Rectangle place = control.getDisplay().map(control, null, within).intersection(
                control.getDisplay().map(control, null, new Rectangle(0, 0, control.getSize().x, control.getSize().y)));
        place.x -= shell.getBounds().x;
        place.y -= shell.getBounds().y;
        place = place.intersection(new Rectangle(0, 0, shot.width, shot.height));
        if (!text.isBlank() && place.width > 4 && place.height > 8) {
            seen.add(seen(control.getClass().getSimpleName() + " '" + text + "'", place));
        }
    }

    private Seen seen(String what, Rectangle place) {
        Map<RGB, Integer> colours = new HashMap<>();
        for (int x = place.x; x < place.x + place.width; x++) {
            for (int y = place.y; y < place.y + place.height; y++) {
                colours.merge(shot.palette.getRGB(shot.getPixel(x, y)), 1, Integer::sum);
            }
        }
        RGB ground = colours.entrySet().stream().max(Comparator.comparingInt(Map.Entry::getValue)).orElseThrow().getKey();
        double contrast = colours.keySet().stream().mapToDouble(colour -> Contrast.of(colour, ground)).max().orElse(1);
        return new Seen(what, Contrast.luminance(ground), contrast);
    }
}
