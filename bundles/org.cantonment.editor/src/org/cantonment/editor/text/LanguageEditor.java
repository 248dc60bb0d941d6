package org.cantonment.editor.text;

import java.util.Optional;

import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.editors.text.TextEditor;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;

/** A text editor for every language that registered itself. Undo is the document's own. */
public final class LanguageEditor extends TextEditor {

    /** The context in which the editor's own keys work. */
    public static final String SCOPE = "org.cantonment.editor.scope";

    private static final int MARGIN = 4;

    private final DocumentModels models = DocumentModels.all();
    private LanguageOutline outline;
    private Occurrences occurrences;

    @Override
    protected void initializeEditor() {
        super.initializeEditor();
        setSourceViewerConfiguration(new EditorConfiguration(getPreferenceStore()));
    }

    @Override
    protected void initializeKeyBindingScopes() {
        setKeyBindingScopes(new String[] { SCOPE });
    }

    @Override
    public void createPartControl(Composite parent) {
        super.createPartControl(parent);
        getSourceViewer().getTextWidget().setLeftMargin(MARGIN);
        getSourceViewer().getTextWidget().addFocusListener(
                FocusListener.focusGainedAdapter(event -> model().ifPresent(DocumentModel::renewLinks)));
        occurrences = new Occurrences(this);
        occurrences.follow(document());
    }

    @Override
    protected void doSetInput(IEditorInput input) throws CoreException {
        super.doSetInput(input);
        if (occurrences != null) {
            occurrences.follow(document());
        }
        if (outline != null) {
            model().ifPresent(outline::follow);
        }
    }

    /**
     * The model of the edited document.
     *
     * @return empty if the file is of no known language or lies outside the workspace
     */
    public Optional<DocumentModel> model() {
        return models.of(document());
    }

    /**
     * The edited document.
     *
     * @return null once the editor is closed
     */
    public IDocument document() {
        return getDocumentProvider() == null ? null : getDocumentProvider().getDocument(getEditorInput());
    }

    /**
     * The text viewer.
     *
     * @return null before the editor is shown
     */
    public ISourceViewer viewer() {
        return getSourceViewer();
    }

    /**
     * What is said when the pointer rests on the text; to be asked on any thread but the screen's.
     *
     * @return a hover over the present viewer
     */
    public ITextHover hover() {
        return new FindingHover(getSourceViewer());
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        if (IContentOutlinePage.class.equals(adapter)) {
            if (outline == null || outline.isDisposed()) {
                outline = new LanguageOutline(this);
                model().ifPresent(outline::follow);
            }
            return adapter.cast(outline);
        }
        return super.getAdapter(adapter);
    }

    @Override
    public void dispose() {
        if (occurrences != null) {
            occurrences.follow(null);
        }
        super.dispose();
    }
}
