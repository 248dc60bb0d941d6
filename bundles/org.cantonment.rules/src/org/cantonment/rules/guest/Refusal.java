package org.cantonment.rules.guest;

import java.util.Comparator;

/**
 * A check, or a whole plug-in, that was not let in.
 *
 * @param origin where it comes from
 * @param name the check's name; empty if it is not known
 * @param why a whole sentence
 */
public record Refusal(Origin origin, String name, String why) implements Comparable<Refusal> {

    private static final Comparator<Refusal> ORDER = Comparator.comparing(Refusal::origin).thenComparing(Refusal::name)
            .thenComparing(Refusal::why);

    @Override
    public int compareTo(Refusal other) {
        return ORDER.compare(this, other);
    }
}
