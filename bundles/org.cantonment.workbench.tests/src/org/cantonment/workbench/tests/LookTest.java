package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cantonment.editor.api.TextKind;
import org.cantonment.workbench.ThemeHandler;
import org.cantonment.workbench.findings.FindingsView;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The window by day and by night. Contrast is measured as the W3C's WCAG 2.1 says (1.4.3, relative luminance). */
class LookTest {

    private static final double LEAST_CONTRAST = 4.5;

    @AfterEach
    void backToLight() {
        engine().setTheme(ThemeHandler.LIGHT, true);
        Screen.idle();
    }

    private static IThemeEngine engine() {
        return PlatformUI.getWorkbench().getService(IThemeEngine.class);
    }

    @Test
    void everyKindOfTextCanBeReadByDayAndByNight() throws PartInitException {
        OpenBook list = spoiled();
        Screen.picture("light");
        double day = readable(list);
        list.run("org.cantonment.workbench.theme");
        Screen.until("the text stands on a dark ground", () -> luminance(background(list)) < 0.05);
        Screen.idle();
        Screen.picture("dark");
        double night = readable(list);
        assertTrue(day > 0.8 && night < 0.05, day + " by day, " + night + " by night");
    }

    private static OpenBook spoiled() throws PartInitException {
        Campaign campaign = Campaign.anew();
        campaign.write("ombra-4.list", Campaign.LIST.replace("Marsh-Scouts", "Marsh-Scout")
                .replace("2 Crank-Troop", "2 crank-troop"));
        campaign.open("lake.rules");
        Campaign.page().showView(FindingsView.ID);
        OpenBook list = campaign.open("ombra-4.list");
        Campaign.page().activate(list.editor());
        Screen.until("both slips are marked", () -> list.marks().size() == 2);
        list.caretBehind("Tread");
        Screen.idle();
        return list;
    }

    private static RGB background(OpenBook book) {
        return book.widget().getBackground().getRGB();
    }

    /** Holds every kind's colour against the ground; tells how light the ground is. */
    private static double readable(OpenBook book) {
        double ground = luminance(background(book));
        for (TextKind kind : TextKind.values()) {
            RGB colour = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry()
                    .getRGB(kind.colourId());
            double ink = luminance(colour);
            double contrast = (Math.max(ground, ink) + 0.05) / (Math.min(ground, ink) + 0.05);
            assertTrue(contrast >= LEAST_CONTRAST, kind + " has a contrast of " + contrast);
        }
        return ground;
    }

    private static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
