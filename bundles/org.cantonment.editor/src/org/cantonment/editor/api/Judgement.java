package org.cantonment.editor.api;

import java.util.List;

import org.eclipse.core.resources.IFile;

/** Everything that was found in a group at one moment. Never changes; may be read from any thread. */
@FunctionalInterface
public interface Judgement {

    /**
     * What was found in a file.
     *
     * @param file a file of the group
     * @return all its findings, those of the language included; empty for a file that was not judged
     */
    List<Finding> of(IFile file);
}
