package org.cantonment.editor.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.Consumer;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Judgement;
import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.api.Severity;
import org.cantonment.editor.api.Taken;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;

/**
 * What is known about an open document, kept current. Edits are counted; the worker always takes the
 * newest text, and a run whose count has been overtaken is given up.
 */
public final class DocumentModel implements IDocumentListener {

    private record Text(long version, String text) {
    }

    private final DocumentModels models;
    private final IDocument document;
    private final IFile file;
    private final LanguageHost host;
    private final List<Consumer<Snapshot>> listeners = new CopyOnWriteArrayList<>();
    private final AtomicBoolean queued = new AtomicBoolean();
    private volatile Text latest;
    private volatile Snapshot snapshot = Snapshot.NOTHING;
    private volatile XtextTools tools;
    private volatile String uri = "";
    private volatile boolean disposed;

    private volatile boolean pointsAside;

    // what follows belongs to the worker
    private XtextResource resource;
    private String applied;

    DocumentModel(DocumentModels models, IDocument document, IFile file, LanguageHost host) {
        this.models = models;
        this.document = document;
        this.file = file;
        this.host = host;
        latest = new Text(0, document.get());
        document.addDocumentListener(this);
        schedule();
    }

    @Override
    public void documentAboutToBeChanged(DocumentEvent event) {
        // the text is taken when it has changed
    }

    @Override
    public void documentChanged(DocumentEvent event) {
        latest = new Text(latest.version() + 1, document.get());
        schedule();
    }

    /** The file that is edited. */
    public IFile file() {
        return file;
    }

    /** The language of the file. */
    public LanguageHost host() {
        return host;
    }

    /** The document that is edited. */
    public IDocument document() {
        return document;
    }

    /** The newest snapshot, which may be older than the document. Any thread. */
    public Snapshot snapshot() {
        return snapshot;
    }

    /** The URI by which links lead to this file; empty while the language is still starting. Any thread. */
    public String uri() {
        return uri;
    }

    /** How often the document has been changed. Any thread. */
    public long version() {
        return latest.version();
    }

    /** The language's services, or null while the language is still starting. Any thread. */
    public XtextTools tools() {
        return tools;
    }

    /**
     * Tells a listener of every snapshot to come, on the worker's thread.
     *
     * @param listener must return at once
     */
    public void addListener(Consumer<Snapshot> listener) {
        listeners.add(listener);
    }

    /**
     * Forgets a listener.
     *
     * @param listener what was added
     */
    public void removeListener(Consumer<Snapshot> listener) {
        listeners.remove(listener);
    }

    /**
     * Reads the resource, up to date with the document as it is when the worker comes to it.
     *
     * @param <T> what is read
     * @param reader gets the resource and the signal that the document has changed again; must not
     *            keep the resource
     * @return the answer to come; it fails with a cancellation if the document changed meanwhile
     */
    public <T> CompletableFuture<T> read(BiFunction<XtextResource, CancelIndicator, T> reader) {
        return models.worker().ask(() -> {
            Text text = latest;
            bringUpTo(text.text());
            return reader.apply(resource, () -> overtaken(text.version()));
        });
    }

    /** Examines the document once more although it has not changed. Any thread. */
    public void schedule() {
        if (!disposed && queued.compareAndSet(false, true)) {
            models.worker().run(this::work);
        }
    }

    void dispose() {
        disposed = true;
        document.removeDocumentListener(this);
        listeners.clear();
        models.letGo(host, file);
    }

    boolean overtaken(long version) {
        return disposed || latest.version() != version;
    }

    private void work() {
        queued.set(false);
        Text text = latest;
        if (disposed) {
            return;
        }
        try {
            bringUpTo(text.text());
            CancelIndicator cancel = () -> overtaken(text.version());
            publish(new Examination(host, file, tools, resource, cancel).run(text.version(), text.text()));
            models.judgeLater(host.group(file));
        } catch (Throwable failure) { // Xtext's cancellation is an Error
            failed(failure, text);
        }
    }

    /** Another file of the group was read anew: links into it still name the right thing, but an old copy of it. */
    void pointAside() {
        pointsAside = true;
    }

    /** Examines the document if links of it point at things that have been read anew since. Any thread. */
    public void renewLinks() {
        if (pointsAside) {
            schedule();
        }
    }

    private void failed(Throwable failure, Text text) {
        if (tools != null && tools.cancelling().isOperationCanceledException(failure)) {
            return; // the edit that overtook this run has queued the next one
        }
        if (failure instanceof VirtualMachineError fatal) {
            throw fatal;
        }
        applied = null; // the resource may be half changed: take the text anew next time
        ILog.of(DocumentModel.class).error("Could not examine " + file.getFullPath(), failure);
        Finding finding = new Finding(Severity.CAUTION, "editor.failed",
                "This file could not be examined; the log has the details. What is shown may be out of date.", 0, 0);
        Snapshot old = snapshot;
        publish(new Snapshot(text.version(), text.text(), List.of(new Found(finding, false)), true,
                List.of(), old.outline(), List.of()));
    }

    private void bringUpTo(String text) {
        if (tools == null) {
            tools = XtextTools.of(host.injector());
        }
        if (!text.equals(applied)) {
            applied = null;
            Taken taken = host.group(file).take(file, text);
            resource = taken.resource();
            uri = resource.getURI().toString();
            applied = text;
            models.examineAnew(taken.renewed());
            models.pointAside(this);
        } else if (pointsAside) {
            resource.relink();
        }
        pointsAside = false;
    }

    /** Takes the findings of those who judge the meaning, if they are of the present text; on the worker. */
    void takeJudged(Judgement judgement) {
        Snapshot current = snapshot;
        if (applied == null || current.version() < 0 || overtaken(current.version())) {
            return; // the next run asks again
        }
        Set<Finding> own = new HashSet<>();
        current.findings().stream().filter(found -> !found.further()).forEach(found -> own.add(found.finding().bare()));
        List<Found> all = new ArrayList<>();
        for (Finding finding : judgement.of(file)) {
            all.add(new Found(finding, !own.contains(finding.bare())));
        }
        all.sort(Examination.byPlace());
        publish(current.completed(all));
    }

    private void publish(Snapshot newest) {
        snapshot = newest;
        for (Consumer<Snapshot> listener : listeners) {
            listener.accept(newest);
        }
    }
}
