package org.cantonment.notation.reading;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Function;

/** Things that contain or follow one another, and must not come back to themselves. */
public final class Circles {

    private Circles() {
    }

    /**
     * @param start where to begin
     * @param next  what a thing leads to directly
     * @return whether the way leads back to the start
     */
    public static <T> boolean leadsBack(T start, Function<T, ? extends Collection<? extends T>> next) {
        Set<T> seen = new HashSet<>();
        Deque<T> open = new ArrayDeque<>(next.apply(start));
        while (!open.isEmpty()) {
            T at = open.pop();
            if (at == start) {
                return true;
            }
            if (seen.add(at)) {
                open.addAll(next.apply(at));
            }
        }
        return false;
    }
}
