package org.cantonment.workbench.answers;

import java.util.function.Consumer;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener;
import org.eclipse.ui.IWorkbenchPart;

/** Tells which editor is in front; none once the last is closed. */
public final class EditorWatch implements IPartListener {

    private final Consumer<IEditorPart> taker;

    /**
     * Watches for somebody.
     *
     * @param taker gets the editor, or null
     */
    public EditorWatch(Consumer<IEditorPart> taker) {
        this.taker = taker;
    }

    @Override
    public void partActivated(IWorkbenchPart part) {
        partBroughtToTop(part);
    }

    @Override
    public void partBroughtToTop(IWorkbenchPart part) {
        if (part instanceof IEditorPart editor) {
            taker.accept(editor);
        }
    }

    @Override
    public void partClosed(IWorkbenchPart part) {
        if (part instanceof IEditorPart && part.getSite().getPage().getEditorReferences().length == 0) {
            taker.accept(null);
        }
    }

    @Override
    public void partDeactivated(IWorkbenchPart part) {
        // what was looked at stays
    }

    @Override
    public void partOpened(IWorkbenchPart part) {
        partBroughtToTop(part);
    }
}
