package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.rules.RuleSet;

/** The books that hold at a time, each after all those that it stands over. */
final class BookOrder {

    private final List<RuleSet> books = new ArrayList<>();
    private final Map<Id, Integer> numbers = new HashMap<>();
    private final Map<Id, Set<Id>> below = new HashMap<>();

    BookOrder(List<RuleSet> all, Occasion occasion, EraOrder eras) {
        Map<Id, RuleSet> byId = new HashMap<>();
        for (RuleSet book : all) {
            byId.putIfAbsent(book.id(), book);
        }
        Set<Id> seen = new HashSet<>();
        for (RuleSet book : all) {
            visit(book, byId, seen);
        }
        books.removeIf(book -> !book.when().covers(occasion, eras));
        for (RuleSet book : books) {
            numbers.put(book.id(), numbers.size());
        }
    }

    private void visit(RuleSet book, Map<Id, RuleSet> byId, Set<Id> seen) {
        if (!seen.add(book.id())) {
            return;
        }
        Set<Id> under = new HashSet<>();
        for (Id lower : book.over()) {
            RuleSet base = byId.get(lower);
            if (base != null) {
                visit(base, byId, seen);
                under.add(lower);
                under.addAll(below.getOrDefault(lower, Set.of()));
            }
        }
        under.remove(book.id());
        below.put(book.id(), under);
        books.add(book);
    }

    /** The books, lower ones first. */
    List<RuleSet> books() {
        return books;
    }

    /** The number of a book in that order. */
    int number(RuleSet book) {
        return numbers.get(book.id());
    }

    /** Whether the first book stands over the second, directly or not. */
    boolean over(int upper, int lower) {
        return below.get(books.get(upper).id()).contains(books.get(lower).id());
    }

    /** Whether a book stands over another at all. */
    boolean layer(int book) {
        return !books.get(book).over().isEmpty();
    }

    String title(int book) {
        return books.get(book).title();
    }
}
