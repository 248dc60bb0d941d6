package org.cantonment.stock.turnout;

import java.util.Arrays;

/** What the arcs of a network are, for whoever reads a cut. */
final class Labels {

    /** Where the pieces come from that go through an arc, or where they stand. */
    enum Kind {
        STACK, FRAMES, FRAMES_AS, FRAMES_CAPPED, TURN, FEED, SHARE, INNER, NEED
    }

    private Kind[] kinds = new Kind[64];
    private int[] subjects = new int[64];
    private int[] details = new int[64];

    /** Told of every other number: an arc and its way back are of one kind. */
    void put(int arc, Kind kind, int subject, int detail) {
        if (arc / 2 >= kinds.length) {
            kinds = Arrays.copyOf(kinds, arc);
            subjects = Arrays.copyOf(subjects, arc);
            details = Arrays.copyOf(details, arc);
        }
        kinds[arc / 2] = kind;
        subjects[arc / 2] = subject;
        details[arc / 2] = detail;
    }

    Kind kind(int arc) {
        return kinds[arc / 2];
    }

    int subject(int arc) {
        return subjects[arc / 2];
    }

    int detail(int arc) {
        return details[arc / 2];
    }
}
