package org.cantonment.editor.text;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.cantonment.editor.api.Link;
import org.cantonment.editor.api.Target;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.Snapshot;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import org.eclipse.jface.viewers.IPostSelectionProvider;

/** Marks every use of the name under the caret. */
final class Occurrences {

    private static final String TYPE = "org.cantonment.editor.occurrence";

    private final LanguageEditor editor;
    private final Consumer<Snapshot> snapshots = this::snapshotTaken;
    private Annotation[] marked = {};
    private DocumentModel model;

    Occurrences(LanguageEditor editor) {
        this.editor = editor;
        ((IPostSelectionProvider) editor.getSelectionProvider())
                .addPostSelectionChangedListener(event -> mark());
    }

    /** Turns to another document; null leaves the present one. */
    void follow(IDocument document) {
        if (model != null) {
            model.removeListener(snapshots);
        }
        marked = new Annotation[0];
        model = DocumentModels.all().of(document).orElse(null);
        if (model != null) {
            model.addListener(snapshots);
        }
    }

    private void snapshotTaken(Snapshot snapshot) {
        editor.getSite().getShell().getDisplay().asyncExec(this::mark);
    }

    private void mark() {
        if (model == null || editor.viewer() == null || editor.viewer().getAnnotationModel() == null) {
            return;
        }
        Snapshot snapshot = model.snapshot();
        if (snapshot.version() != model.version()
                || !(editor.getSelectionProvider().getSelection() instanceof ITextSelection caret)) {
            return;
        }
        Map<Annotation, Position> places = new HashMap<>();
        targetAt(snapshot, caret.getOffset()).ifPresent(target -> addUses(snapshot, target, places));
        IAnnotationModel annotations = editor.viewer().getAnnotationModel();
        if (marked.length > 0 || !places.isEmpty()) {
            ((IAnnotationModelExtension) annotations).replaceAnnotations(marked, places);
            marked = places.keySet().toArray(new Annotation[0]);
        }
    }

    private Optional<Target> targetAt(Snapshot snapshot, int offset) {
        Optional<Target> used = snapshot.linkAt(offset).map(Link::target);
        return used.isPresent() ? used
                : snapshot.links().stream().map(Link::target)
                        .filter(target -> here(target) && target.offset() <= offset
                                && offset <= target.offset() + target.length())
                        .findFirst();
    }

    private void addUses(Snapshot snapshot, Target target, Map<Annotation, Position> places) {
        for (Link link : snapshot.links()) {
            if (samePlace(link.target(), target)) {
                places.put(mark(target), new Position(link.offset(), link.length()));
            }
        }
        if (here(target)) {
            places.put(mark(target), new Position(target.offset(), target.length()));
        }
    }

    private static Annotation mark(Target target) {
        return new Annotation(TYPE, false, target.label());
    }

    private static boolean samePlace(Target one, Target other) {
        return one.offset() == other.offset() && one.uri().equals(other.uri());
    }

    private boolean here(Target target) {
        return target.uri().equals(model.uri());
    }
}
