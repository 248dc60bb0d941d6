package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Ruled;

/** A unit, formation, support or limit with all that the layers say about it. */
final class Card {

    private final Ruled ruled;
    private final int book;
    private final List<Said<Fact>> holding = new ArrayList<>();
    private final List<Said<Fact>> others = new ArrayList<>();

    Card(Ruled ruled, int book) {
        this.ruled = ruled;
        this.book = book;
    }

    void add(Fact fact, int sayer, Direction direction, boolean own, boolean holds, int closeness) {
        (holds ? holding : others).add(new Said<>(fact, sayer, direction, own, closeness));
    }

    Ruled ruled() {
        return ruled;
    }

    Id id() {
        return ruled.id();
    }

    int book() {
        return book;
    }

    /** The lines of a form that hold now, lower books first, in the order of the text. */
    <T extends Fact> List<Said<T>> holding(Class<T> form) {
        return only(form, holding);
    }

    /** The lines of a form that hold at other times only. */
    <T extends Fact> List<Said<T>> others(Class<T> form) {
        return only(form, others);
    }

    private static <T extends Fact> List<Said<T>> only(Class<T> form, List<Said<Fact>> from) {
        List<Said<T>> found = new ArrayList<>();
        for (Said<Fact> said : from) {
            if (form.isInstance(said.fact())) {
                found.add(new Said<>(form.cast(said.fact()), said.book(), said.direction(), said.own(),
                        said.closeness()));
            }
        }
        return found;
    }
}
