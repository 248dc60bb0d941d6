package org.cantonment.editor.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.cantonment.editor.api.Finding;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import org.eclipse.swt.widgets.Display;

/**
 * Brings a buffer's annotations in line with the newest snapshot: what stays is not touched, so that
 * nothing flickers. Runs on the screen's thread, where the document changes too, so that no place can
 * be out of date.
 */
final class FindingPublisher implements Consumer<Snapshot> {

    private final DocumentModel model;
    private final IAnnotationModel annotations;

    FindingPublisher(DocumentModel model, IAnnotationModel annotations) {
        this.model = model;
        this.annotations = annotations;
    }

    @Override
    public void accept(Snapshot snapshot) {
        if (annotations != null) {
            Display.getDefault().asyncExec(() -> publish(snapshot));
        }
    }

    private void publish(Snapshot snapshot) {
        if (model.overtaken(snapshot.version())) {
            return;
        }
        Map<Finding, Deque<FindingAnnotation>> shown = shown(snapshot.complete());
        Map<Annotation, Position> added = new HashMap<>();
        for (Found found : snapshot.findings()) {
            Deque<FindingAnnotation> same = shown.get(found.finding().bare());
            if (same != null && !same.isEmpty()) {
                same.removeFirst().renew(found);
            } else {
                added.put(new FindingAnnotation(found),
                        new Position(found.finding().offset(), found.finding().length()));
            }
        }
        List<Annotation> gone = new ArrayList<>();
        shown.values().forEach(gone::addAll);
        if (!gone.isEmpty() || !added.isEmpty()) {
            ((IAnnotationModelExtension) annotations).replaceAnnotations(gone.toArray(new Annotation[0]), added);
        }
    }

    /** What is shown now, by the finding as it would be said of its present place. */
    private Map<Finding, Deque<FindingAnnotation>> shown(boolean furtherToo) {
        Map<Finding, Deque<FindingAnnotation>> shown = new HashMap<>();
        for (Iterator<Annotation> all = annotations.getAnnotationIterator(); all.hasNext();) {
            if (all.next() instanceof FindingAnnotation mine && (furtherToo || !mine.found().further())) {
                Position place = annotations.getPosition(mine);
                Finding said = mine.found().finding();
                Finding now = place == null ? said.bare() : said.bareAt(place.offset, place.length);
                shown.computeIfAbsent(now, key -> new ArrayDeque<>()).add(mine);
            }
        }
        return shown;
    }
}
