package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

import org.cantonment.editor.api.Finding;
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

/**
 * Offers the fixes of the findings on the caret's line: those under the caret first, and those that change another file
 * last. What mends several findings is offered once.
 */
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
        Optional<DocumentModel> model = DocumentModels.all().of(document);
        if (model.isEmpty() || annotations == null) {
            return List.of();
        }
        List<FixProposal> offers = new ArrayList<>();
        String text = model.get().snapshot().text();
        for (Placed placed : onLine(document, annotations, offset)) {
            int moved = placed.place().offset - placed.finding().offset();
            for (Fix fix : placed.finding().fixes()) {
                FixProposal proposal = new FixProposal(fix, moved, text);
                if (proposal.fits(document) && offers.stream().noneMatch(proposal::doesTheSame)) {
                    offers.add(proposal);
                }
            }
        }
        offers.sort(Comparator.comparing(FixProposal::elsewhere)); // a stable sort: what mends this text comes first
        return List.copyOf(offers);
    }

    /** A finding, and where it stands now. */
    private record Placed(Finding finding, Position place, boolean under) {
    }

    /** The findings on the line, those under the caret first, then the gravest; always in the same order. */
    private static List<Placed> onLine(IDocument document, IAnnotationModel annotations, int offset) {
        List<Placed> found = new ArrayList<>();
        for (Iterator<Annotation> all = annotations.getAnnotationIterator(); all.hasNext();) {
            if (all.next() instanceof FindingAnnotation mine) {
                Position place = annotations.getPosition(mine);
                if (place != null && sameLine(document, place.offset, offset)) {
                    found.add(new Placed(mine.found().finding(), place, place.overlapsWith(offset, 1)));
                }
            }
        }
        found.sort(Comparator.comparing((Placed one) -> !one.under()).thenComparingInt(one -> one.place().offset)
                .thenComparing(one -> one.finding().severity()).thenComparing(one -> one.finding().message()));
        return found;
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
