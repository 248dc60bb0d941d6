package org.cantonment.workbench.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.Found;
import org.cantonment.editor.model.Snapshot;
import org.cantonment.workbench.check.FindingMarkers;
import org.cantonment.workbench.check.Lines;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Gathers the rows in a job: from the open documents as they are now, and from the markers of all
 * other books.
 */
final class FindingRows {

    /** What a job hands to the view. */
    record Shown(List<FindingRow> all, List<FindingRow> rows, FindingQuery query) {
    }

    private static final int SETTLE_MILLIS = 40;

    private final Consumer<Shown> taker;
    private final Runnable documents = this::changed;
    private final IResourceChangeListener markers = event -> changed();
    private final Job job = new Job("Gathering findings") {
        @Override
        protected IStatus run(IProgressMonitor monitor) {
            return gather();
        }

        @Override
        public boolean belongsTo(Object family) {
            return FindingsView.ID.equals(family);
        }
    };
    private volatile FindingQuery query = FindingQuery.ALL;

    /** Begins to watch; the taker is called on the job's thread. */
    FindingRows(Consumer<Shown> taker) {
        this.taker = taker;
        job.setSystem(true);
        DocumentModels.all().addListener(documents);
        ResourcesPlugin.getWorkspace().addResourceChangeListener(markers, IResourceChangeEvent.POST_CHANGE);
        changed();
    }

    FindingQuery query() {
        return query;
    }

    void ask(FindingQuery newer) {
        query = newer;
        job.schedule();
    }

    void dispose() {
        DocumentModels.all().removeListener(documents);
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(markers);
        job.cancel();
    }

    private void changed() {
        job.schedule(SETTLE_MILLIS);
    }

    private IStatus gather() {
        List<FindingRow> rows = new ArrayList<>();
        Set<IFile> open = new HashSet<>();
        for (DocumentModel model : DocumentModels.all().open()) {
            Snapshot snapshot = model.snapshot();
            if (snapshot.version() >= 0 && open.add(model.file())) {
                addRows(model.file(), snapshot, rows);
            }
        }
        try {
            addMarkers(open, rows);
        } catch (CoreException failure) {
            return Status.error("The findings could not be gathered", failure);
        }
        FindingQuery asked = query;
        taker.accept(new Shown(List.copyOf(rows), asked.apply(rows), asked));
        return Status.OK_STATUS;
    }

    private static void addRows(IFile file, Snapshot snapshot, List<FindingRow> rows) {
        Lines lines = new Lines(snapshot.text());
        for (Found found : snapshot.findings()) {
            Finding finding = found.finding();
            rows.add(new FindingRow(file, finding.severity(), finding.message(), finding.rule(),
                    lines.numberAt(finding.offset()), finding.offset(), finding.length()));
        }
    }

    private static void addMarkers(Set<IFile> open, List<FindingRow> rows) throws CoreException {
        IMarker[] all = ResourcesPlugin.getWorkspace().getRoot().findMarkers(FindingMarkers.TYPE, true,
                IResource.DEPTH_INFINITE);
        for (IMarker marker : all) {
            if (marker.getResource() instanceof IFile file && !open.contains(file)) {
                int start = marker.getAttribute(IMarker.CHAR_START, 0);
                rows.add(new FindingRow(file, FindingMarkers.severity(marker),
                        marker.getAttribute(IMarker.MESSAGE, ""), FindingMarkers.rule(marker),
                        marker.getAttribute(IMarker.LINE_NUMBER, 1), start,
                        marker.getAttribute(IMarker.CHAR_END, start) - start));
            }
        }
    }
}
