package org.cantonment.desk.eras;

import java.util.List;

import org.cantonment.domain.finding.Action;

/**
 * One thing to do to a list.
 *
 * @param words   a sentence without its full stop: "Take out 2 Crank troop"
 * @param brief   the same in the fewest words: "2 Crank troop out"
 * @param actions what does it
 */
public record Edit(String words, String brief, List<Action> actions) {
    public Edit {
        actions = List.copyOf(actions);
    }
}
