package org.cantonment.editor.model;

import java.util.Locale;

import org.cantonment.editor.api.Severity;
import org.eclipse.jface.text.quickassist.IQuickFixableAnnotation;
import org.eclipse.jface.text.source.Annotation;

/** A finding as the text editor draws it. Its place is the position that the annotation model keeps. */
public final class FindingAnnotation extends Annotation implements IQuickFixableAnnotation {

    private volatile Found found;

    FindingAnnotation(Found found) {
        super(type(found.finding().severity()), false, text(found));
        this.found = found;
    }

    /**
     * The annotation type of a severity.
     *
     * @param severity any severity
     * @return an id that the editor's plugin.xml defines
     */
    public static String type(Severity severity) {
        return "org.cantonment.editor." + severity.name().toLowerCase(Locale.ROOT);
    }

    private static String text(Found found) {
        return found.finding().severity().word() + ": " + found.finding().message();
    }

    /** The finding, its fixes counted in the text of the snapshot they came with. */
    public Found found() {
        return found;
    }

    void renew(Found newer) {
        found = newer;
    }

    @Override
    public void setQuickFixable(boolean state) {
        // follows from the fixes
    }

    @Override
    public boolean isQuickFixableStateSet() {
        return true;
    }

    @Override
    public boolean isQuickFixable() {
        return !found.finding().fixes().isEmpty();
    }
}
