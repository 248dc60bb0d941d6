package org.cantonment.workbench.check;

import java.util.Arrays;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;

/** Tells on which line of a text a character stands. */
public final class Lines {

    private final int[] starts;

    /**
     * The lines of a text.
     *
     * @param text any text
     */
    public Lines(String text) {
        int[] found = new int[16];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char at = text.charAt(i);
            boolean ends = at == '\n' || at == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
            if (ends) {
                if (count == found.length) {
                    found = Arrays.copyOf(found, count * 2);
                }
                found[count++] = i + 1;
            }
        }
        starts = Arrays.copyOf(found, count);
    }

    /**
     * The lines of a file as it is on the disk.
     *
     * @param file an existing file
     * @return its lines
     * @throws CoreException if it cannot be read
     */
    public static Lines of(IFile file) throws CoreException {
        return new Lines(file.readString());
    }

    /**
     * The line of a character.
     *
     * @param offset characters from the start
     * @return a line number from 1
     */
    public int numberAt(int offset) {
        int found = Arrays.binarySearch(starts, offset);
        return found >= 0 ? found + 1 : -found - 1;
    }
}
