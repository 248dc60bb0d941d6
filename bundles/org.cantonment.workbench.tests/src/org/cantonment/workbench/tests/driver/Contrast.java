package org.cantonment.workbench.tests.driver;

import org.eclipse.swt.graphics.RGB;

/** How far two colours stand apart: relative luminance and contrast ratio as the W3C's WCAG 2.1 defines them. */
public final class Contrast {

    /** What running text needs (WCAG 2.1, 1.4.3, level AA); what cannot be used at the moment is exempt. */
    public static final double LEAST = 4.5;

    private Contrast() {
    }

    /**
     * The ratio of two colours.
     *
     * @param one a colour
     * @param other another
     * @return from 1 for the same to 21 for black on white
     */
    public static double of(RGB one, RGB other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /**
     * How light a colour is.
     *
     * @param colour a colour
     * @return from 0 for black to 1 for white
     */
    public static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
