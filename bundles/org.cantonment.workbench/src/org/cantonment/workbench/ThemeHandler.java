package org.cantonment.workbench;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.ui.PlatformUI;

/** Switches between the light and the dark look; the choice is kept. */
public final class ThemeHandler extends AbstractHandler {

    /** The id of the light theme. */
    public static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";
    /** The id of the dark theme. */
    public static final String DARK = "org.eclipse.e4.ui.css.theme.e4_dark";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
        ITheme active = engine.getActiveTheme();
        engine.setTheme(active != null && DARK.equals(active.getId()) ? LIGHT : DARK, true);
        return null;
    }
}
