package org.cantonment.workbench.eras;

import java.util.List;

import org.cantonment.editor.api.TextChange;

/**
 * A change that can be made to the list.
 *
 * @param words what it does
 * @param era the era in which the list is legal after it
 * @param changes the edits; empty if it cannot be written by itself
 */
record EraChoice(String words, String era, List<TextChange> changes) {

    EraChoice {
        changes = List.copyOf(changes);
    }
}
