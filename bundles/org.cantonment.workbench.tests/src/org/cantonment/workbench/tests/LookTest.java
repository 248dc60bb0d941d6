package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.editor.api.TextKind;
import org.cantonment.workbench.ThemeHandler;
import org.cantonment.workbench.eras.ErasView;
import org.cantonment.workbench.findings.FindingsView;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.Contrast;
import org.cantonment.workbench.tests.driver.Letters;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The window by day and by night. */
class LookTest {

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
        Screen.until("the text stands on a dark ground", () -> Contrast.luminance(background(list)) < 0.05);
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
        for (TextKind kind : TextKind.values()) {
            RGB colour = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry()
                    .getRGB(kind.colourId());
            double contrast = Contrast.of(background(book), colour);
            assertTrue(contrast >= Contrast.LEAST, kind + " has a contrast of " + contrast);
        }
        return Contrast.luminance(background(book));
    }

    /** From the pixels, since a widget may well claim a colour in which it is not painted. */
    @Test
    void allLettersStandOutByDayAndByNightAndByDayAgain() throws PartInitException {
        OpenBook list = spoiled();
        standOut("by day", true);
        list.run("org.cantonment.workbench.theme");
        Screen.until("the text stands on a dark ground", () -> Contrast.luminance(background(list)) < 0.05);
        standOut("by night", false);
        list.run("org.cantonment.workbench.theme");
        Screen.until("the text stands on a light ground", () -> Contrast.luminance(background(list)) > 0.8);
        Screen.picture("light-again");
        standOut("by day again", true);
        engine().setTheme(ThemeHandler.DARK, true); // as the settings' page does
        standOut("by night again", false);
        engine().setTheme(ThemeHandler.LIGHT, true);
        standOut("at last", true);
    }

    private static void standOut(String when, boolean day) throws PartInitException {
        for (String view : List.of(ErasView.ID, FindingsView.ID)) {
            Campaign.page().showView(view, null, IWorkbenchPage.VIEW_VISIBLE);
            Screen.idle();
            List<Letters.Seen> all = Letters.inTheWindow();
            assertTrue(all.size() >= 10, () -> "too few texts " + when + ": " + all);
            assertEquals(List.of(), all.stream().filter(seen -> seen.contrast() < Contrast.LEAST
                    || seen.ground() > 0.5 != day).toList(), when + ", " + view);
        }
    }
}
