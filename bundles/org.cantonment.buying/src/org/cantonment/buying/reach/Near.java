package org.cantonment.buying.reach;

import java.util.List;

import org.cantonment.domain.common.Id;

/**
 * The filling of a formation that a shelf is nearest to.
 *
 * @param needed how many pieces it needs
 * @param missing which of them are missing; empty if it can be fielded now
 * @param proven whether no filling is nearer
 */
public record Near(Filling filling, int needed, List<Missing> missing, boolean proven) {

    /** So many pieces, each of any of these types. */
    public record Missing(int count, List<Id> anyOf) {

        public Missing {
            anyOf = List.copyOf(anyOf);
        }
    }

    public Near {
        missing = List.copyOf(missing);
    }

    /** How many pieces it is away; 0 if it can be fielded now. */
    public int lacking() {
        return missing.stream().mapToInt(Missing::count).sum();
    }
}
