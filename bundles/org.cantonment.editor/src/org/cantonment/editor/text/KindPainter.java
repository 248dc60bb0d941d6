package org.cantonment.editor.text;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.cantonment.editor.api.StyledRun;
import org.cantonment.editor.api.TextKind;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.Snapshot;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewerExtension2;
import org.eclipse.jface.text.ITypedRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.TextPresentation;
import org.eclipse.jface.text.presentation.IPresentationDamager;
import org.eclipse.jface.text.presentation.IPresentationRepairer;
import org.eclipse.jface.text.source.ISourceViewer;

/**
 * Colours the lines that an edit touched from the lexer at once, and lays the finer kinds of the newest
 * snapshot over them.
 */
final class KindPainter implements IPresentationDamager, IPresentationRepairer, IDocumentListener {

    private final ISourceViewer viewer;
    private final KindColours colours;
    private final MovingRuns finer = new MovingRuns();
    private final Consumer<Snapshot> snapshots = this::snapshotTaken;
    private IDocument document;
    private DocumentModel model;
    private boolean painted;

    KindPainter(ISourceViewer viewer) {
        this.viewer = viewer;
        this.colours = new KindColours(() -> invalidate(null));
        viewer.getTextWidget().addDisposeListener(gone -> dispose());
    }

    @Override
    public void setDocument(IDocument newDocument) {
        if (document == newDocument) {
            return;
        }
        leave();
        document = newDocument;
        Optional<DocumentModel> found = DocumentModels.all().of(newDocument);
        if (found.isPresent()) {
            model = found.get();
            document.addPrenotifiedDocumentListener(this);
            model.addListener(snapshots);
            if (model.snapshot().version() == model.version()) {
                finer.replace(model.snapshot().runs());
                painted = true;
            }
        }
    }

    private void leave() {
        if (model != null) {
            model.removeListener(snapshots);
            document.removePrenotifiedDocumentListener(this);
        }
        model = null;
        document = null;
        painted = false;
        finer.replace(List.of());
    }

    private void dispose() {
        leave();
        colours.dispose();
    }

    @Override
    public void documentAboutToBeChanged(DocumentEvent event) {
        finer.move(event.getOffset(), event.getLength(), event.getText() == null ? 0 : event.getText().length());
    }

    @Override
    public void documentChanged(DocumentEvent event) {
        // the viewer asks for the damaged lines itself
    }

    @Override
    public IRegion getDamageRegion(ITypedRegion partition, DocumentEvent event, boolean partitioningChanged) {
        int inserted = event.getText() == null ? 0 : event.getText().length();
        return wholeLines(event.getOffset(), inserted);
    }

    @Override
    public void createPresentation(TextPresentation presentation, ITypedRegion damage) {
        IRegion lines = wholeLines(damage.getOffset(), damage.getLength());
        try {
            String text = document.get(lines.getOffset(), lines.getLength());
            TextKind[] kinds = kinds(text, lines.getOffset());
            int start = Math.max(0, damage.getOffset() - lines.getOffset());
            int end = Math.min(kinds.length, start + damage.getLength());
            while (start < end) {
                int next = start + 1;
                while (next < end && kinds[next] == kinds[start]) {
                    next++;
                }
                presentation.addStyleRange(colours.style(lines.getOffset() + start, next - start, kinds[start]));
                start = next;
            }
        } catch (BadLocationException overtaken) {
            ILog.of(KindPainter.class).info("A line to be coloured is gone", overtaken);
        }
    }

    private TextKind[] kinds(String text, int offset) {
        if (model == null || model.tools() == null) {
            TextKind[] plain = new TextKind[text.length()];
            Arrays.fill(plain, TextKind.PLAIN);
            return plain;
        }
        TextKind[] kinds = LineTokens.kinds(text, model.tools(), model.host());
        for (StyledRun run : finer.runs()) {
            int from = Math.max(0, run.offset() - offset);
            int to = Math.min(kinds.length, run.end() - offset);
            if (from < to) {
                Arrays.fill(kinds, from, to, run.kind());
            }
        }
        return kinds;
    }

    private IRegion wholeLines(int offset, int length) {
        try {
            int end = Math.min(document.getLength(), offset + length);
            IRegion first = document.getLineInformationOfOffset(offset);
            IRegion last = document.getLineInformationOfOffset(end);
            return new Region(first.getOffset(), last.getOffset() + last.getLength() - first.getOffset());
        } catch (BadLocationException outside) {
            return new Region(0, document.getLength());
        }
    }

    private void snapshotTaken(Snapshot snapshot) {
        viewer.getTextWidget().getDisplay().asyncExec(() -> {
            if (model != null && model.version() == snapshot.version()) {
                IRegion difference = finer.replace(snapshot.runs());
                if (!painted) {
                    painted = true; // until now the language was starting and all was plain
                    invalidate(null);
                } else if (difference != null) {
                    invalidate(difference);
                }
            }
        });
    }

    private void invalidate(IRegion region) {
        if (document != null && !viewer.getTextWidget().isDisposed()) {
            if (region == null) {
                viewer.invalidateTextPresentation();
            } else {
                ((ITextViewerExtension2) viewer).invalidateTextPresentation(region.getOffset(), region.getLength());
            }
        }
    }
}
