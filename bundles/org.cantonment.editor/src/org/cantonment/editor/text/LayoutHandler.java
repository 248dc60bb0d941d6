package org.cantonment.editor.text;

import java.util.List;

import org.cantonment.editor.api.TextChange;
import org.cantonment.editor.model.DocumentModel;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.handlers.HandlerUtil;

/** Lays out the selected lines, or the whole file. The edits are found by the worker. */
public final class LayoutHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        if (HandlerUtil.getActiveEditorChecked(event) instanceof LanguageEditor editor && editor.isEditable()
                && editor.getSelectionProvider().getSelection() instanceof ITextSelection selection) {
            editor.model().ifPresent(model -> layOut(model, selection));
        }
        return null;
    }

    private static void layOut(DocumentModel model, ITextSelection selection) {
        long version = model.version();
        boolean all = selection.getLength() == 0;
        Display display = Display.getCurrent();
        model.read((resource, cancel) -> {
            String text = resource.getParseResult().getRootNode().getText();
            return all ? model.host().format(text, 0, text.length())
                    : model.host().format(text, selection.getOffset(), selection.getLength());
        }).whenComplete((changes, failure) -> display.asyncExec(() -> {
            if (failure != null) {
                ILog.of(LayoutHandler.class).error("Could not lay out " + model.file().getFullPath(), failure);
            } else if (model.version() == version) {
                apply(model, changes);
            }
        }));
    }

    private static void apply(DocumentModel model, List<TextChange> changes) {
        try {
            TextChanges.apply(model.document(), changes);
        } catch (BadLocationException outside) {
            ILog.of(LayoutHandler.class).error("The layout lies outside the text", outside);
        }
    }
}
