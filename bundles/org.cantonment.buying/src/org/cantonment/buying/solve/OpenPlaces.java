package org.cantonment.buying.solve;

import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** The open places, by bound and by age. */
final class OpenPlaces {

    private final NavigableSet<Place> byBound = new TreeSet<>();
    private final NavigableMap<Long, Place> byAge = new TreeMap<>();

    void add(Place place) {
        byBound.add(place);
        byAge.put(place.number(), place);
    }

    int size() {
        return byAge.size();
    }

    boolean isEmpty() {
        return byAge.isEmpty();
    }

    /** The least bound of all; the other figure if nothing is open. */
    long least(long otherwise) {
        return byBound.isEmpty() ? otherwise : byBound.first().bound();
    }

    /** Takes out the place with the least bound. */
    Place best() {
        Place place = byBound.pollFirst();
        byAge.remove(place.number());
        return place;
    }

    /** Takes out the youngest place. */
    Place youngest() {
        Place place = byAge.pollLastEntry().getValue();
        byBound.remove(place);
        return place;
    }
}
