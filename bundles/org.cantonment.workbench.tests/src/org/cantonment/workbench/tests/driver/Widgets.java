package org.cantonment.workbench.tests.driver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Finds widgets. */
public final class Widgets {

    private Widgets() {
    }

    /**
     * The first widget of a kind that fits.
     *
     * @param <T> the kind
     * @param kind the kind
     * @param within where to look
     * @param fits what it must be like
     * @return the widget
     * @throws IllegalStateException if there is none
     */
    public static <T extends Control> T first(Class<T> kind, Composite within, Predicate<T> fits) {
        T found = search(kind, within, fits);
        if (found == null) {
            throw new IllegalStateException("There is no such " + kind.getSimpleName());
        }
        return found;
    }

    /**
     * The first widget of a kind that fits, if there is one.
     *
     * @param <T> the kind
     * @param kind the kind
     * @param within where to look
     * @param fits what it must be like
     * @return the widget or null
     */
    public static <T extends Control> T search(Class<T> kind, Composite within, Predicate<T> fits) {
        for (Control child : within.getChildren()) {
            if (kind.isInstance(child) && fits.test(kind.cast(child))) {
                return kind.cast(child);
            }
            T deeper = child instanceof Composite composite ? search(kind, composite, fits) : null;
            if (deeper != null) {
                return deeper;
            }
        }
        return null;
    }

    /**
     * All widgets of a kind that fit.
     *
     * @param <T> the kind
     * @param kind the kind
     * @param within where to look
     * @param fits what they must be like
     * @return the widgets, possibly none
     */
    public static <T extends Control> List<T> all(Class<T> kind, Composite within, Predicate<T> fits) {
        List<T> found = new ArrayList<>();
        for (Control child : within.getChildren()) {
            if (kind.isInstance(child) && fits.test(kind.cast(child))) {
                found.add(kind.cast(child));
            }
            if (child instanceof Composite composite) {
                found.addAll(all(kind, composite, fits));
            }
        }
        return found;
    }
}
