package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.XtextTools;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistEntry;
import org.eclipse.xtext.ide.editor.contentassist.IdeContentProposalAcceptor;
import org.eclipse.xtext.ide.editor.contentassist.antlr.ContentAssistContextFactory;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.util.TextRegion;

import com.google.common.util.concurrent.MoreExecutors;

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

    /** Keeps all proposals: Xtext's own stops at a hundred, and the hundred and first may be wanted. */
    private static final class All extends IdeContentProposalAcceptor {
        @Override
        public boolean canAcceptMoreProposals() {
            return !cancelIndicator.isCanceled();
        }
    }

    @Override
    public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
        error = null;
        Optional<DocumentModel> model = DocumentModels.all().of(viewer.getDocument());
        if (model.isEmpty()) {
            return new ICompletionProposal[0];
        }
        List<ICompletionProposal> proposals = new ArrayList<>();
        for (ContentAssistEntry entry : ask(model.get(), offset)) {
            proposals.add(new Proposal(entry, offset,
                    () -> icons.get(model.get().host(), "proposal." + entry.getKind())));
        }
        return proposals.toArray(new ICompletionProposal[0]);
    }

    private List<ContentAssistEntry> ask(DocumentModel model, int offset) {
        try {
            return model.read((resource, cancel) -> entries(model.tools(), resource, offset, cancel))
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

    private static List<ContentAssistEntry> entries(XtextTools tools, XtextResource resource, int offset,
            CancelIndicator cancel) {
        String text = resource.getParseResult().getRootNode().getText();
        if (offset > text.length()) {
            return List.of();
        }
        ContentAssistContextFactory factory = tools.contexts().get();
        factory.setPool(MoreExecutors.newDirectExecutorService()); // the worker is thread enough
        ContentAssistContext[] contexts = factory.create(text, new TextRegion(offset, 0), offset, resource);
        All acceptor = new All();
        acceptor.setCancelIndicator(cancel);
        tools.proposals().createProposals(List.of(contexts), acceptor);
        List<ContentAssistEntry> entries = new ArrayList<>();
        acceptor.getEntries().forEach(entries::add);
        return entries;
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
