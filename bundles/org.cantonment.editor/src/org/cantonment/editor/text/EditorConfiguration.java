package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.text.DefaultInformationControl;
import org.eclipse.jface.text.IAutoEditStrategy;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IInformationControlCreator;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.contentassist.ContentAssistant;
import org.eclipse.jface.text.contentassist.IContentAssistant;
import org.eclipse.jface.text.hyperlink.IHyperlinkDetector;
import org.eclipse.jface.text.presentation.IPresentationReconciler;
import org.eclipse.jface.text.presentation.PresentationReconciler;
import org.eclipse.jface.text.quickassist.IQuickAssistAssistant;
import org.eclipse.jface.text.quickassist.QuickAssistAssistant;
import org.eclipse.jface.text.reconciler.IReconciler;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.ui.editors.text.TextSourceViewerConfiguration;

/** Joins the parts of the editor to the viewer. */
final class EditorConfiguration extends TextSourceViewerConfiguration {

    EditorConfiguration(IPreferenceStore preferences) {
        super(preferences);
    }

    @Override
    public IPresentationReconciler getPresentationReconciler(ISourceViewer viewer) {
        PresentationReconciler reconciler = new PresentationReconciler();
        KindPainter painter = new KindPainter(viewer);
        reconciler.setDamager(painter, IDocument.DEFAULT_CONTENT_TYPE);
        reconciler.setRepairer(painter, IDocument.DEFAULT_CONTENT_TYPE);
        return reconciler;
    }

    @Override
    public IReconciler getReconciler(ISourceViewer viewer) {
        return null; // the document's model follows the text by itself
    }

    @Override
    public IAutoEditStrategy[] getAutoEditStrategies(ISourceViewer viewer, String contentType) {
        return new IAutoEditStrategy[] { new LineContinuation() };
    }

    @Override
    public ITextHover getTextHover(ISourceViewer viewer, String contentType) {
        return new FindingHover(viewer);
    }

    @Override
    public IInformationControlCreator getInformationControlCreator(ISourceViewer viewer) {
        return parent -> new DefaultInformationControl(parent, false);
    }

    @Override
    public IContentAssistant getContentAssistant(ISourceViewer viewer) {
        ContentAssistant assistant = new ContentAssistant(true);
        assistant.setContentAssistProcessor(new Completion(new Icons(viewer.getTextWidget())),
                IDocument.DEFAULT_CONTENT_TYPE);
        assistant.enableColoredLabels(true);
        assistant.enableAutoInsert(true);
        assistant.setInformationControlCreator(getInformationControlCreator(viewer));
        assistant.setStatusLineVisible(true);
        assistant.setShowEmptyList(true);
        assistant.setEmptyMessage("Nothing fits here");
        return assistant;
    }

    @Override
    public IQuickAssistAssistant getQuickAssistAssistant(ISourceViewer viewer) {
        QuickAssistAssistant assistant = new QuickAssistAssistant();
        assistant.setQuickAssistProcessor(new FixAssist());
        assistant.setInformationControlCreator(getInformationControlCreator(viewer));
        return assistant;
    }

    @Override
    public IHyperlinkDetector[] getHyperlinkDetectors(ISourceViewer viewer) {
        List<IHyperlinkDetector> detectors = new ArrayList<>();
        detectors.add(new NameLinks());
        IHyperlinkDetector[] inherited = super.getHyperlinkDetectors(viewer);
        if (inherited != null) {
            detectors.addAll(List.of(inherited));
        }
        return detectors.toArray(new IHyperlinkDetector[0]);
    }
}
