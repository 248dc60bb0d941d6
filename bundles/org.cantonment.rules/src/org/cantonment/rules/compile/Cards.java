package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.rules.Change;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Ruled;

/** All cards of all books with the lines that hold, own and of the layers. */
final class Cards {

    private final List<Card> units = new ArrayList<>();
    private final List<Card> formations = new ArrayList<>();
    private final List<Card> supports = new ArrayList<>();
    private final List<Card> limits = new ArrayList<>();
    private final Map<Id, Card> byId = new HashMap<>();
    private final Occasion occasion;
    private final EraTree eras;

    Cards(BookOrder order, Occasion occasion, EraTree eras) {
        this.occasion = occasion;
        this.eras = eras;
        for (RuleSet book : order.books()) {
            int number = order.number(book);
            enter(book.units(), number, units);
            enter(book.formations(), number, formations);
            enter(book.supports(), number, supports);
            enter(book.limits(), number, limits);
        }
        for (RuleSet book : order.books()) {
            for (Change change : book.changes()) {
                Card card = byId.get(change.target());
                if (card != null && change.when().covers(occasion, eras)) {
                    int closeness = eras.closeness(change.when());
                    for (Fact fact : change.facts()) {
                        put(card, fact, order.number(book), change.direction(), false, closeness);
                    }
                }
            }
        }
    }

    private void enter(List<? extends Ruled> things, int book, List<Card> into) {
        for (Ruled ruled : things) {
            Card card = new Card(ruled, book);
            if (byId.putIfAbsent(ruled.id(), card) == null) {
                into.add(card);
                for (Fact fact : ruled.facts()) {
                    put(card, fact, book, Direction.CHANGE, true, 0);
                }
            }
        }
    }

    private void put(Card card, Fact fact, int book, Direction direction, boolean own, int closeness) {
        card.add(fact, book, direction, own, fact.when().covers(occasion, eras),
                closeness + eras.closeness(fact.when()));
    }

    List<Card> units() {
        return units;
    }

    List<Card> formations() {
        return formations;
    }

    List<Card> supports() {
        return supports;
    }

    List<Card> limits() {
        return limits;
    }
}
