package org.cantonment.desk.judging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;

/** Rulings that were made, kept as long as the books they were made of are the same. Not for several threads. */
final class Rulings {
    /** Books by identity: two readings of one text are different books here. */
    private record Key(List<Integer> books, Occasion occasion) {
    }

    private final Map<RuleSet, Integer> numbers = new IdentityHashMap<>();
    private final Map<Key, Ruling> made = new HashMap<>();
    private int next;

    Ruling of(List<RuleSet> books, Occasion occasion) {
        List<Integer> ids = new ArrayList<>(books.size());
        for (RuleSet book : books) {
            ids.add(numbers.computeIfAbsent(book, b -> next++));
        }
        return made.computeIfAbsent(new Key(ids, occasion), key -> RulingCompiler.compile(books, occasion));
    }

    /** Forgets every ruling that stands on a book not among these. */
    void keepOnly(List<RuleSet> books) {
        Map<RuleSet, Integer> kept = new IdentityHashMap<>();
        for (RuleSet book : books) {
            Integer number = numbers.get(book);
            if (number != null) {
                kept.put(book, number);
            }
        }
        if (kept.size() < numbers.size()) {
            numbers.clear();
            numbers.putAll(kept);
            made.keySet().removeIf(key -> !kept.values().containsAll(key.books()));
        }
    }
}
