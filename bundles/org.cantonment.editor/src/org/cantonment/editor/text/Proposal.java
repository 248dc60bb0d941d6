package org.cantonment.editor.text;

import java.util.Locale;
import java.util.function.Supplier;

import org.cantonment.editor.api.Suggestion;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.ICompletionProposalExtension2;
import org.eclipse.jface.text.contentassist.ICompletionProposalExtension6;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;

/** One completion; stays in the list while what has been typed still begins it. */
final class Proposal implements ICompletionProposal, ICompletionProposalExtension2, ICompletionProposalExtension6 {

    private final Suggestion suggestion;
    private final int start;
    private final int typedTo;
    private final Supplier<Image> image;
    private int caret = -1;

    Proposal(Suggestion suggestion, int offset, Supplier<Image> image) {
        this.suggestion = suggestion;
        this.image = image;
        start = suggestion.offset();
        typedTo = offset;
    }

    @Override
    public void apply(IDocument document) {
        insert(document, typedTo);
    }

    @Override
    public void apply(ITextViewer viewer, char trigger, int stateMask, int offset) {
        insert(viewer.getDocument(), offset);
    }

    private void insert(IDocument document, int offset) {
        try {
            document.replace(start, offset - start, suggestion.text());
            caret = start + suggestion.text().length();
        } catch (BadLocationException overtaken) {
            ILog.of(Proposal.class).info("The place of a proposal is gone", overtaken);
        }
    }

    @Override
    public boolean validate(IDocument document, int offset, DocumentEvent event) {
        try {
            String typed = offset < start ? null : document.get(start, offset - start);
            return typed != null && begins(suggestion.text(), typed);
        } catch (BadLocationException overtaken) {
            return false;
        }
    }

    /** A word begins with what was typed; so does a word whose later part after a hyphen does. */
    static boolean begins(String proposal, String typed) {
        String word = proposal.toLowerCase(Locale.ROOT);
        String part = typed.toLowerCase(Locale.ROOT);
        return word.startsWith(part) || word.contains("-" + part);
    }

    @Override
    public Point getSelection(IDocument document) {
        return caret < 0 ? null : new Point(caret, 0);
    }

    @Override
    public String getDisplayString() {
        return getStyledDisplayString().getString();
    }

    @Override
    public StyledString getStyledDisplayString() {
        StyledString text = new StyledString(suggestion.text());
        if (!suggestion.description().isEmpty()) {
            text.append("  " + suggestion.description(), StyledString.QUALIFIER_STYLER);
        }
        return text;
    }

    @Override
    public Image getImage() {
        return image.get();
    }

    @Override
    public String getAdditionalProposalInfo() {
        return null;
    }

    @Override
    public IContextInformation getContextInformation() {
        return null;
    }

    @Override
    public void selected(ITextViewer viewer, boolean smartToggle) {
        // nothing is shown in the text before a proposal is taken
    }

    @Override
    public void unselected(ITextViewer viewer) {
        // see selected
    }
}
