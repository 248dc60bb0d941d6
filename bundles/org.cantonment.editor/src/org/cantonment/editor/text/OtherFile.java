package org.cantonment.editor.text;

import java.util.List;

import org.cantonment.editor.api.Elsewhere;
import org.cantonment.editor.api.TextChange;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.texteditor.ITextEditor;

/** Changes a file other than the one that is looked at: in its editor, where it can be seen, completed and undone. */
public final class OtherFile {

    private static final String BLANK = "\"\"";

    private OtherFile() {
    }

    /**
     * Opens the file and makes the edits, as one step of its undo; the caret stands in the first empty quotes of what was
     * put in, else what was put in is selected. Screen's thread only.
     *
     * @param where the file
     * @param changes the edits
     * @return whether they were made; not if the file has another text by now, or lies outside the workspace
     */
    public static boolean change(Elsewhere where, List<TextChange> changes) {
        ITextEditor editor = Places.editor(where.uri()).orElse(null);
        if (editor == null) {
            return false;
        }
        IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
        if (!document.get().equals(where.text())) {
            editor.getEditorSite().getActionBars().getStatusLineManager()
                    .setErrorMessage("This file has changed meanwhile; ask for the fix again.");
            return false;
        }
        try {
            TextChanges.apply(document, changes);
            reveal(editor, changes);
            return true;
        } catch (BadLocationException outside) {
            ILog.of(OtherFile.class).error("A fix lies outside the text", outside);
            return false;
        }
    }

    private static void reveal(ITextEditor editor, List<TextChange> changes) {
        int before = 0;
        for (TextChange change : changes.stream().sorted((a, b) -> Integer.compare(a.offset(), b.offset())).toList()) {
            int start = change.offset() + before;
            int blank = change.text().indexOf(BLANK);
            if (blank >= 0) {
                editor.selectAndReveal(start + blank + 1, 0);
                return;
            }
            editor.selectAndReveal(start, change.text().length());
            before += change.text().length() - change.length();
        }
    }
}
