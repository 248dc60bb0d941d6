package org.cantonment.editor.text;

import java.util.EnumMap;
import java.util.Map;

import org.cantonment.editor.api.TextKind;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.ui.PlatformUI;

/** How each kind of text is drawn under the present theme. */
final class KindColours {

    private static final Map<TextKind, Integer> FONTS = new EnumMap<>(Map.of(TextKind.KEYWORD, SWT.BOLD,
            TextKind.DEFINITION, SWT.BOLD, TextKind.SIGN, SWT.BOLD, TextKind.REMARK, SWT.ITALIC));

    private final Runnable changed;
    private final IPropertyChangeListener listener;

    /** Calls back on the screen's thread whenever a colour has changed. */
    KindColours(Runnable changed) {
        this.changed = changed;
        listener = event -> {
            if (event.getProperty().startsWith("org.cantonment.editor.colour.")) {
                this.changed.run();
            }
        };
        registry().addListener(listener);
    }

    void dispose() {
        registry().removeListener(listener);
    }

    StyleRange style(int offset, int length, TextKind kind) {
        StyleRange range = new StyleRange(offset, length, registry().get(kind.colourId()), null);
        range.fontStyle = FONTS.getOrDefault(kind, SWT.NORMAL);
        return range;
    }

    private static ColorRegistry registry() {
        return PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry();
    }
}
