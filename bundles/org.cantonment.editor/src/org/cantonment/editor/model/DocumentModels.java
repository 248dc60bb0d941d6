package org.cantonment.editor.model;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

import org.cantonment.editor.api.FileGroup;
import org.cantonment.editor.api.Judgement;
import org.cantonment.editor.api.LanguageHost;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBufferManager;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.text.IDocument;

/** All open documents of all languages; made and dropped as their file buffers come and go. */
public final class DocumentModels {

    private static final DocumentModels ALL = new DocumentModels();

    private final LanguageHosts hosts = new LanguageHosts();
    private final LanguageWorker worker = new LanguageWorker("Notation");
    private final Set<FileGroup> toJudge = ConcurrentHashMap.newKeySet();
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
        return worker.idle();
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

    void examineAnew(Collection<IFile> files) {
        for (IFile file : files) {
            of(file).ifPresent(DocumentModel::schedule);
        }
    }

    void pointAside(DocumentModel renewed) {
        for (DocumentModel other : open.values()) {
            if (other != renewed && other.host() == renewed.host()) {
                other.pointAside();
            }
        }
    }

    /** From now on what the disk says of the file holds. */
    void letGo(LanguageHost host, IFile file) {
        worker.run(() -> {
            FileGroup group = host.group(file);
            examineAnew(group.letGo(file));
            judgeLater(group);
        });
    }

    void changedOnDisk(IFile file) {
        if (of(file).isEmpty() && file.getProject().isAccessible()) {
            hosts.forFile(file).ifPresent(host -> letGo(host, file));
        }
    }

    /** Has a group judged as soon as nothing urgent waits. */
    public void judgeLater(FileGroup group) {
        boolean wanted = open.values().stream().anyMatch(model -> model.host().group(model.file()) == group);
        if (wanted && toJudge.add(group)) {
            worker.runLater(() -> judge(group));
        }
    }

    private void judge(FileGroup group) {
        toJudge.remove(group);
        try {
            Judgement judgement = group.judge(worker::urgentWaits);
            for (DocumentModel model : open.values()) {
                if (model.host().group(model.file()) == group) {
                    model.takeJudged(judgement);
                }
            }
        } catch (CancellationException madeRoom) {
            judgeLater(group);
        }
    }
}
