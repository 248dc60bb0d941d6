package org.cantonment.editor.model;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.Consumer;

import org.cantonment.editor.api.FileGroup;
import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.api.Severity;
import org.cantonment.editor.api.TextChange;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.xtext.parser.IParseResult;
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
    private final AtomicBoolean furtherQueued = new AtomicBoolean();
    private volatile Text latest;
    private volatile Snapshot snapshot = Snapshot.NOTHING;
    private volatile XtextTools tools;
    private volatile String uri = "";
    private volatile boolean disposed;

    // what follows belongs to the worker
    private XtextResource resource;
    private String applied;
    private boolean indexDue;
    private boolean relinkDue;
    private volatile boolean pointsAside;

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
            catchUp();
            return reader.apply(resource, () -> overtaken(text.version()));
        });
    }

    /** Examines the document once more although it has not changed. Any thread. */
    public void schedule() {
        if (!disposed && queued.compareAndSet(false, true)) {
            models.worker().run(this::work);
        }
    }

    void relink() {
        relinkDue = true;
        schedule();
    }

    void dispose() {
        disposed = true;
        document.removeDocumentListener(this);
        listeners.clear();
        models.worker().run(() -> models.relink(host.group(file).released(file)));
    }

    boolean beginFurther() {
        return furtherQueued.compareAndSet(false, true);
    }

    void endFurther() {
        furtherQueued.set(false);
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
            catchUp();
            CancelIndicator cancel = () -> overtaken(text.version());
            publish(new Examination(host, tools, resource, cancel).run(text.version(), text.text()));
            models.askFurther(this);
        } catch (Throwable failure) { // Xtext's cancellation is an Error
            failed(failure, text);
        }
    }

    /** Lets the others know of new names, and renews what links of this file have lost their aim. */
    private void catchUp() {
        if (indexDue) {
            models.relink(host.group(file).updated(resource));
            models.pointAside(this);
            indexDue = false;
        }
        if (relinkDue || pointsAside) {
            resource.relink();
            relinkDue = false;
            pointsAside = false;
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
        applied = null; // the resource may be half changed: read it anew next time
        ILog.of(DocumentModel.class).error("Could not examine " + file.getFullPath(), failure);
        Finding finding = new Finding(Severity.CAUTION, "editor.failed",
                "This file could not be examined; the log has the details. What is shown may be out of date.", 0, 0);
        Snapshot old = snapshot;
        publish(new Snapshot(text.version(), text.text(), List.of(new Found(finding, List.of(), false)), true,
                List.of(), old.outline(), List.of()));
    }

    private void bringUpTo(String text) {
        if (tools == null) {
            tools = XtextTools.of(host.injector());
        }
        if (resource == null) {
            FileGroup group = host.group(file);
            resource = group.resource(file);
            IParseResult parsed = resource.getParseResult();
            uri = resource.getURI().toString();
            applied = parsed == null ? null : parsed.getRootNode().getText();
            indexDue = true;
        }
        if (applied == null) {
            reparse(text);
            return;
        }
        TextChange change = TextDifference.between(applied, text);
        if (change != null) {
            applied = null;
            indexDue = true;
            resource.update(change.offset(), change.length(), change.text());
            applied = text;
        }
    }

    private void reparse(String text) {
        try {
            indexDue = true;
            resource.reparse(text);
            applied = text;
        } catch (IOException cannotBe) { // the text is in memory
            throw new UncheckedIOException(cannotBe);
        }
    }

    /** Takes the findings of those who judge the meaning; called on the worker. */
    void takeFurther(long version, List<Finding> further) {
        Snapshot current = snapshot;
        if (current.version() != version || overtaken(version) || applied == null) {
            return; // a newer run will ask again
        }
        Examination examination = new Examination(host, tools, resource, CancelIndicator.NullImpl);
        List<Found> all = new ArrayList<>(current.findings());
        all.removeIf(Found::further);
        for (Finding finding : further) {
            all.add(examination.found(finding, true));
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
