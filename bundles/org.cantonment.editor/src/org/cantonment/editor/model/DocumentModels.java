package org.cantonment.editor.model;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.LanguageHost;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBufferManager;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.IDocument;

/** All open documents of all languages; made and dropped as their file buffers come and go. */
public final class DocumentModels {

    private static final DocumentModels ALL = new DocumentModels();

    private final LanguageHosts hosts = new LanguageHosts();
    private final LanguageWorker worker = new LanguageWorker("Notation");
    private final LanguageWorker judge = new LanguageWorker("Findings");
    private final Map<IDocument, DocumentModel> open = new ConcurrentHashMap<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    private DocumentModels() {
        ITextFileBufferManager buffers = FileBuffers.getTextFileBufferManager();
        buffers.addFileBufferListener(new BufferWatch(this));
        for (IFileBuffer buffer : buffers.getFileBuffers()) {
            opened(buffer);
        }
        ResourcesPlugin.getWorkspace().addResourceChangeListener(new DiskWatch(this),
                IResourceChangeEvent.POST_CHANGE);
    }

    /** All open documents. The first call begins to watch the file buffers. */
    public static DocumentModels all() {
        return ALL;
    }

    /**
     * The model of a document.
     *
     * @param document a document; may be null
     * @return its model, if it is an open file of a known language
     */
    public Optional<DocumentModel> of(IDocument document) {
        return document == null ? Optional.empty() : Optional.ofNullable(open.get(document));
    }

    /**
     * The model of an open file.
     *
     * @param file a file
     * @return its model, if the file is open
     */
    public Optional<DocumentModel> of(IFile file) {
        return open.values().stream().filter(model -> model.file().equals(file)).findFirst();
    }

    /**
     * Whether every open document has been looked at as it is now, with everything that follows.
     *
     * @return true if nothing is queued and nothing runs
     */
    public boolean idle() {
        return worker.idle() && judge.idle();
    }

    /**
     * Tells a listener whenever a document was opened, closed or examined.
     *
     * @param listener called on any thread; must return at once
     */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /**
     * Forgets a listener.
     *
     * @param listener what was added
     */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /**
     * The models of all open documents.
     *
     * @return a copy, in no particular order
     */
    public List<DocumentModel> open() {
        return List.copyOf(open.values());
    }

    /** The one thread that may touch resources. */
    public LanguageWorker worker() {
        return worker;
    }

    /** The languages. */
    public LanguageHosts hosts() {
        return hosts;
    }

    void opened(IFileBuffer buffer) {
        if (buffer instanceof ITextFileBuffer text && buffer.getLocation() != null) {
            IFile file = FileBuffers.getWorkspaceFileAtLocation(buffer.getLocation());
            if (file != null) {
                hosts.forFile(file).ifPresent(host -> add(text, file, host));
            }
        }
    }

    private void add(ITextFileBuffer buffer, IFile file, LanguageHost host) {
        DocumentModel model = new DocumentModel(this, buffer.getDocument(), file, host);
        open.put(buffer.getDocument(), model);
        model.addListener(new FindingPublisher(model, buffer.getAnnotationModel()));
        model.addListener(snapshot -> listeners.forEach(Runnable::run));
        model.schedule();
    }

    void closed(IFileBuffer buffer) {
        if (buffer instanceof ITextFileBuffer text) {
            DocumentModel model = open.remove(text.getDocument());
            if (model != null) {
                model.dispose();
                listeners.forEach(Runnable::run);
            }
        }
    }

    void relink(Collection<IFile> files) {
        for (IFile file : files) {
            of(file).ifPresent(DocumentModel::relink);
        }
    }

    void pointAside(DocumentModel renewed) {
        for (DocumentModel other : open.values()) {
            if (other != renewed && other.host() == renewed.host()) {
                other.pointAside();
            }
        }
    }

    void changedOnDisk(IFile file) {
        if (of(file).isEmpty()) {
            hosts.forFile(file).ifPresent(host -> worker.run(() -> relink(host.group(file).changedOnDisk(file))));
        }
    }

    /** Asks for the findings of the one document, then of those that may depend on it. */
    void askFurther(DocumentModel changed) {
        ask(changed);
        for (DocumentModel other : open.values()) {
            if (other != changed && other.host() == changed.host() && other.snapshot().version() >= 0
                    && other.host().group(other.file()) == changed.host().group(changed.file())) {
                ask(other);
            }
        }
    }

    private void ask(DocumentModel model) {
        if (!model.beginFurther()) {
            return; // the question that is queued already will take the newest text
        }
        judge.run(() -> {
            model.endFurther();
            Snapshot asked = model.snapshot();
            if (!model.overtaken(asked.version())) {
                List<Finding> further = further(model, asked);
                worker.run(() -> model.takeFurther(asked.version(), further));
            }
        });
    }

    private static List<Finding> further(DocumentModel model, Snapshot asked) {
        try {
            return model.host().furtherFindings(model.file(), asked.text(), () -> model.overtaken(asked.version()));
        } catch (RuntimeException failure) {
            ILog.of(DocumentModels.class).error("No findings for " + model.file().getFullPath(), failure);
            return List.of();
        }
    }
}
