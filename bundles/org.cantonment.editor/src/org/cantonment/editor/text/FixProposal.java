package org.cantonment.editor.text;

import java.util.List;

import org.cantonment.editor.api.Fix;
import org.cantonment.editor.api.TextChange;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;

/** A fix as the viewer offers it, moved to where its finding stands now. */
final class FixProposal implements ICompletionProposal {

    private final Fix fix;
    private final int moved;
    private final String saidOf;

    /**
     * A fix to offer.
     *
     * @param fix the fix
     * @param moved how far its finding has moved since
     * @param saidOf the text that the fix was made for
     */
    FixProposal(Fix fix, int moved, String saidOf) {
        this.fix = fix;
        this.moved = moved;
        this.saidOf = saidOf;
    }

    /** Whether the text that would be replaced is still what the fix was made for. */
    boolean fits(IDocument document) {
        if (fix.elsewhere().isPresent()) {
            return true; // asked of the other text when it is open
        }
        try {
            for (TextChange change : fix.changes()) {
                String then = saidOf.substring(change.offset(), change.end());
                if (!then.equals(document.get(change.offset() + moved, change.length()))) {
                    return false;
                }
            }
            return true;
        } catch (BadLocationException | IndexOutOfBoundsException gone) {
            return false;
        }
    }

    /** Whether it changes another file. */
    boolean elsewhere() {
        return fix.elsewhere().isPresent();
    }

    /** Whether another makes the same edits under the same name. */
    boolean doesTheSame(FixProposal other) {
        return fix.label().equals(other.fix.label()) && elsewhere() == other.elsewhere()
                && edits().equals(other.edits());
    }

    private List<TextChange> edits() {
        return elsewhere() ? fix.changes() : fix.changes().stream().map(change -> change.moved(moved)).toList();
    }

    @Override
    public void apply(IDocument document) {
        if (fix.elsewhere().isPresent()) {
            // whoever offered the fix takes the keyboard back first
            Display.getCurrent().asyncExec(() -> OtherFile.change(fix.elsewhere().get(), fix.changes()));
            return;
        }
        if (!fits(document)) {
            return; // edited since it was offered; the next snapshot offers it anew
        }
        try {
            TextChanges.apply(document, edits());
        } catch (BadLocationException cannotBe) { // fits has looked at every place
            ILog.of(FixProposal.class).error("A fix lies outside the text", cannotBe);
        }
    }

    @Override
    public Point getSelection(IDocument document) {
        return null;
    }

    @Override
    public String getAdditionalProposalInfo() {
        return null;
    }

    @Override
    public String getDisplayString() {
        return fix.label();
    }

    @Override
    public Image getImage() {
        return null;
    }

    @Override
    public IContextInformation getContextInformation() {
        return null;
    }
}
