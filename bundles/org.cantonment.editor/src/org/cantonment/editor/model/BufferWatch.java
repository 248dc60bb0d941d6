package org.cantonment.editor.model;

import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.IFileBufferListener;
import org.eclipse.core.runtime.IPath;

/** Makes and drops models as file buffers come and go. */
final class BufferWatch implements IFileBufferListener {

    private final DocumentModels models;

    BufferWatch(DocumentModels models) {
        this.models = models;
    }

    @Override
    public void bufferCreated(IFileBuffer buffer) {
        models.opened(buffer);
    }

    @Override
    public void bufferDisposed(IFileBuffer buffer) {
        models.closed(buffer);
    }

    @Override
    public void bufferContentAboutToBeReplaced(IFileBuffer buffer) {
        // the document tells its listeners itself
    }

    @Override
    public void bufferContentReplaced(IFileBuffer buffer) {
        // the document tells its listeners itself
    }

    @Override
    public void stateChanging(IFileBuffer buffer) {
        // no concern of the model
    }

    @Override
    public void dirtyStateChanged(IFileBuffer buffer, boolean isDirty) {
        // what counts is the text, saved or not
    }

    @Override
    public void stateValidationChanged(IFileBuffer buffer, boolean isStateValidated) {
        // no concern of the model
    }

    @Override
    public void underlyingFileMoved(IFileBuffer buffer, IPath path) {
        // the platform makes a new buffer for the new place
    }

    @Override
    public void underlyingFileDeleted(IFileBuffer buffer) {
        // the editor decides whether the buffer goes
    }

    @Override
    public void stateChangeFailed(IFileBuffer buffer) {
        // no concern of the model
    }
}
