package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

import org.cantonment.editor.api.Fix;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.FindingAnnotation;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.quickassist.IQuickAssistProcessor;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.ISourceViewer;

/** Offers the fixes of the findings on the caret's line, those under the caret first. */
public final class FixAssist implements IQuickAssistProcessor {

    @Override
    public boolean canFix(Annotation annotation) {
        return annotation instanceof FindingAnnotation mine && mine.isQuickFixable();
    }

    @Override
    public boolean canAssist(IQuickAssistInvocationContext context) {
        return false;
    }

    @Override
    public String getErrorMessage() {
        return null;
    }

    @Override
    public ICompletionProposal[] computeQuickAssistProposals(IQuickAssistInvocationContext context) {
        ISourceViewer viewer = context.getSourceViewer();
        return offers(viewer.getDocument(), viewer.getAnnotationModel(), context.getOffset())
                .toArray(new ICompletionProposal[0]);
    }

    /**
     * The fixes that fit the text as it is now.
     *
     * @param document the text
     * @param annotations the findings, each with its present place
     * @param offset the caret
     * @return what to offer
     */
    public static List<ICompletionProposal> offers(IDocument document, IAnnotationModel annotations, int offset) {
        List<ICompletionProposal> under = new ArrayList<>();
        List<ICompletionProposal> beside = new ArrayList<>();
        Optional<DocumentModel> model = DocumentModels.all().of(document);
        if (model.isEmpty() || annotations == null) {
            return under;
        }
        String text = model.get().snapshot().text();
        for (Iterator<Annotation> all = annotations.getAnnotationIterator(); all.hasNext();) {
            if (all.next() instanceof FindingAnnotation mine) {
                Position place = annotations.getPosition(mine);
                if (place != null && sameLine(document, place.offset, offset)) {
                    addFixes(document, mine, place, text, place.overlapsWith(offset, 1) ? under : beside);
                }
            }
        }
        under.addAll(beside);
        return under;
    }

    private static void addFixes(IDocument document, FindingAnnotation annotation, Position place, String text,
            List<ICompletionProposal> offers) {
        int moved = place.offset - annotation.found().finding().offset();
        for (Fix fix : annotation.found().finding().fixes()) {
            FixProposal proposal = new FixProposal(fix, moved, text);
            if (proposal.fits(document)) {
                offers.add(proposal);
            }
        }
    }

    private static boolean sameLine(IDocument document, int one, int other) {
        try {
            return document.getLineOfOffset(one) == document.getLineOfOffset(other);
        } catch (BadLocationException gone) {
            ILog.of(FixAssist.class).info("The place of a finding is gone", gone);
            return false;
        }
    }
}
