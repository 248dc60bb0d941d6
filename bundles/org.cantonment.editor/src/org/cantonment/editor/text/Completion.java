package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.cantonment.editor.api.Suggestion;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import org.eclipse.xtext.resource.XtextResource;

/**
 * Completion from the language's own proposals. The viewer asks on a thread of its own, so waiting for
 * the worker holds nobody up.
 */
public final class Completion implements IContentAssistProcessor {

    private static final int LIMIT_SECONDS = 10;

    private final Icons icons;
    private volatile String error;

    Completion(Icons icons) {
        this.icons = icons;
    }

    @Override
    public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
        error = null;
        Optional<DocumentModel> model = DocumentModels.all().of(viewer.getDocument());
        if (model.isEmpty()) {
            return new ICompletionProposal[0];
        }
        List<ICompletionProposal> proposals = new ArrayList<>();
        for (Suggestion suggestion : ask(model.get(), offset)) {
            proposals.add(new Proposal(suggestion, offset,
                    () -> icons.get(model.get().host(), suggestion.icon())));
        }
        return proposals.toArray(new ICompletionProposal[0]);
    }

    private List<Suggestion> ask(DocumentModel model, int offset) {
        try {
            return model.read((resource, cancel) -> suggestions(model, resource, offset))
                    .get(LIMIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException overtaken) {
            Thread.currentThread().interrupt(); // the viewer asks anew
        } catch (TimeoutException busy) {
            error = "The notation is busy; try again in a moment.";
        } catch (ExecutionException failure) {
            if (!model.tools().cancelling().isOperationCanceledException(failure.getCause())) {
                ILog.of(Completion.class).error("No proposals", failure.getCause());
                error = "No proposals could be made here; the log has the details.";
            }
        }
        return List.of();
    }

    private static List<Suggestion> suggestions(DocumentModel model, XtextResource resource, int offset) {
        String text = resource.getParseResult().getRootNode().getText();
        return offset > text.length() ? List.of() : model.host().complete(resource, text, offset);
    }

    @Override
    public IContextInformation[] computeContextInformation(ITextViewer viewer, int offset) {
        return new IContextInformation[0];
    }

    @Override
    public char[] getCompletionProposalAutoActivationCharacters() {
        return new char[0];
    }

    @Override
    public char[] getContextInformationAutoActivationCharacters() {
        return new char[0];
    }

    @Override
    public String getErrorMessage() {
        return error;
    }

    @Override
    public IContextInformationValidator getContextInformationValidator() {
        return null;
    }
}
