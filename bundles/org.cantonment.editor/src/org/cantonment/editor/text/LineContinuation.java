package org.cantonment.editor.text;

import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.model.DocumentModels;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentCommand;
import org.eclipse.jface.text.IAutoEditStrategy;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.TextUtilities;

/** Begins the next line as the language would have it begun, when Enter is pressed at the end of one. */
final class LineContinuation implements IAutoEditStrategy {

    @Override
    public void customizeDocumentCommand(IDocument document, DocumentCommand command) {
        boolean enter = command.length == 0 && command.text != null
                && TextUtilities.equals(document.getLegalLineDelimiters(), command.text) >= 0;
        if (enter) {
            DocumentModels.all().of(document).ifPresent(model -> customize(document, command, model.host()));
        }
    }

    private static void customize(IDocument document, DocumentCommand command, LanguageHost host) {
        try {
            IRegion line = document.getLineInformationOfOffset(command.offset);
            String left = document.get(line.getOffset(), command.offset - line.getOffset());
            String rest = document.get(command.offset, line.getOffset() + line.getLength() - command.offset);
            if (!rest.isBlank()) {
                return; // in the middle of a line nobody knows what is meant
            }
            String next = host.nextLine(left);
            if (next == null) {
                command.offset = line.getOffset();
                command.length = line.getLength();
                command.text = "";
            } else {
                command.text += next;
            }
        } catch (BadLocationException gone) {
            ILog.of(LineContinuation.class).info("The line that was left is gone", gone);
        }
    }
}
