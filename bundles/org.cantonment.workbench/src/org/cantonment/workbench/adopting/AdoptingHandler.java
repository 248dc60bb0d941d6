package org.cantonment.workbench.adopting;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.ide.ResourceUtil;

/** Looks what adopting the book of rules in the active editor would do. */
public final class AdoptingHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IEditorPart editor = HandlerUtil.getActiveEditor(event);
        IFile file = editor == null ? null : ResourceUtil.getFile(editor.getEditorInput());
        if (file != null && "rules".equals(file.getFileExtension())) {
            try {
                ((AdoptingView) editor.getSite().getPage().showView(AdoptingView.ID)).look(file);
            } catch (PartInitException failure) {
                throw new ExecutionException("The view could not be shown", failure);
            }
        }
        return null;
    }
}
