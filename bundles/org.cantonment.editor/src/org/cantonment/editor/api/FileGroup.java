package org.cantonment.editor.api;

import java.util.Collection;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.eclipse.core.resources.IFile;
import org.eclipse.xtext.util.CancelIndicator;

/**
 * Files that see one another's names: one Xtext resource set and its index. It is entered by the
 * language worker alone, so it need not guard itself against other threads.
 */
public interface FileGroup {

    /**
     * Takes in what an open file now says.
     *
     * @param file a file of this group
     * @param text its whole text, saved or not
     * @return its resource, up to date, and the files that this touches
     */
    Taken take(IFile file, String text);

    /**
     * What the language itself finds in a file that was taken in: slips of syntax, names that lead
     * nowhere, its own checks.
     *
     * @param file a file that was taken in
     * @param cancel asked now and then
     * @return the findings, with places in the text that was taken in last
     * @throws RuntimeException or Error of the kind that Xtext cancels with, if cancelled
     */
    List<Finding> ownFindings(IFile file, CancelIndicator cancel);

    /**
     * Asks those who judge what the texts mean.
     *
     * @param cancelled true as soon as something more urgent waits
     * @return the findings of all files, as of the texts that were taken in last
     * @throws CancellationException if cancelled; what was done is not lost
     */
    Judgement judge(BooleanSupplier cancelled);

    /**
     * An open file was closed, or one that is not open was made, changed or deleted on the disk: what the
     * disk says holds.
     *
     * @param file that file
     * @return the other files whose links were renewed
     */
    Collection<IFile> letGo(IFile file);
}
