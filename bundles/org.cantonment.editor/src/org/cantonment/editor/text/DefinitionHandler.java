package org.cantonment.editor.text;

import java.util.Optional;

import org.cantonment.editor.api.Link;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.ui.handlers.HandlerUtil;

/** Goes from the name under the caret to where it is given. */
public final class DefinitionHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        if (HandlerUtil.getActiveEditorChecked(event) instanceof LanguageEditor editor
                && editor.getSelectionProvider().getSelection() instanceof ITextSelection caret) {
            Optional<Link> link = editor.model().flatMap(model -> model.snapshot().linkAt(caret.getOffset()));
            link.ifPresentOrElse(use -> Places.open(use.target()), () -> editor.getEditorSite().getActionBars()
                    .getStatusLineManager().setMessage("There is no name here that leads anywhere"));
        }
        return null;
    }
}
