package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cantonment.editor.api.TextChange;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.text.undo.IDocumentUndoManager;

/** Makes edits on a document so that one undo takes all of them back. */
public final class TextChanges {

    private TextChanges() {
    }

    /**
     * Makes the edits.
     *
     * @param document the document
     * @param changes edits that do not overlap, all counted in the present text, in any order
     * @throws BadLocationException if one lies outside the document; those behind it are made already
     */
    public static void apply(IDocument document, List<TextChange> changes) throws BadLocationException {
        List<TextChange> backwards = new ArrayList<>(changes);
        backwards.sort(Comparator.comparingInt(TextChange::offset).reversed());
        IDocumentUndoManager undo = DocumentUndoManagerRegistry.getDocumentUndoManager(document);
        if (undo != null) {
            undo.beginCompoundChange();
        }
        try {
            for (TextChange change : backwards) {
                document.replace(change.offset(), change.length(), change.text());
            }
        } finally {
            if (undo != null) {
                undo.endCompoundChange();
            }
        }
    }
}
