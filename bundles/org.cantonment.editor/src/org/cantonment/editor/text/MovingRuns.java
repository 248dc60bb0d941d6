package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.editor.api.StyledRun;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;

/**
 * Runs that move along with the edits until a newer snapshot brings new ones. A run that is touched by
 * an edit is dropped: the lexer's colour shows until then.
 */
final class MovingRuns {

    private List<StyledRun> runs = List.of();

    List<StyledRun> runs() {
        return runs;
    }

    /** Follows an edit that is about to happen. */
    void move(int offset, int removed, int inserted) {
        List<StyledRun> moved = new ArrayList<>(runs.size());
        for (StyledRun run : runs) {
            if (run.end() < offset) {
                moved.add(run);
            } else if (run.offset() > offset + removed
                    || run.offset() == offset + removed && (removed > 0 || inserted == 0)) {
                moved.add(new StyledRun(run.offset() + inserted - removed, run.length(), run.kind()));
            }
        }
        runs = moved;
    }

    /**
     * Takes new runs over.
     *
     * @return the stretch within which old and new differ, or null if they are equal
     */
    IRegion replace(List<StyledRun> newer) {
        List<StyledRun> older = runs;
        runs = newer;
        int shorter = Math.min(older.size(), newer.size());
        int head = 0;
        while (head < shorter && older.get(head).equals(newer.get(head))) {
            head++;
        }
        if (head == older.size() && head == newer.size()) {
            return null;
        }
        int tail = 0;
        while (tail < shorter - head
                && older.get(older.size() - 1 - tail).equals(newer.get(newer.size() - 1 - tail))) {
            tail++;
        }
        int start = Math.min(startOf(older, head, tail), startOf(newer, head, tail));
        int end = Math.max(endOf(older, head, tail), endOf(newer, head, tail));
        return new Region(start, end - start);
    }

    private static int startOf(List<StyledRun> list, int head, int tail) {
        return head < list.size() - tail ? list.get(head).offset() : Integer.MAX_VALUE;
    }

    private static int endOf(List<StyledRun> list, int head, int tail) {
        return head < list.size() - tail ? list.get(list.size() - 1 - tail).end() : 0;
    }
}
