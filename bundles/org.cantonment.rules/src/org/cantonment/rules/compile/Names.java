package org.cantonment.rules.compile;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Kind;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.view.Selector;

/** Titles of everything, kinds with those they lie in, and selectors made of names. */
final class Names {

    private final Map<Id, String> titles = new HashMap<>();
    private final Map<Id, Id> parents = new HashMap<>();
    private final Map<Id, BitSet> choices = new HashMap<>();
    private final Map<Id, Integer> supports = new HashMap<>();
    private final Set<Integer> formations = new HashSet<>();
    private int count;

    Names(List<RuleSet> books) {
        for (RuleSet book : books) {
            titles.put(book.id(), book.title());
            book.sides().forEach(side -> titles.put(side.id(), side.title()));
            book.eras().forEach(era -> titles.put(era.id(), era.title()));
            book.items().forEach(item -> titles.put(item.id(), item.title()));
            book.limits().forEach(limit -> titles.put(limit.id(), limit.title()));
            book.supports().forEach(support -> titles.put(support.id(), support.title()));
            for (Kind kind : book.kinds()) {
                titles.put(kind.id(), kind.title());
                kind.parent().ifPresent(parent -> parents.put(kind.id(), parent));
            }
        }
    }

    void title(Id id, String title) {
        titles.put(id, title);
    }

    String title(Id id) {
        String title = titles.get(id);
        return title == null ? id.name() : title;
    }

    Map<Id, String> titles() {
        return titles;
    }

    /** The kinds and all that they lie in; a circle of kinds ends where it closes. */
    Set<Id> closure(List<Id> kinds) {
        Set<Id> all = new HashSet<>();
        for (Id kind : kinds) {
            for (Id at = kind; at != null && all.add(at); at = parents.get(at)) {
                continue;
            }
        }
        return all;
    }

    void enter(Id id, int choice, Set<Id> kinds, boolean formation) {
        count = Math.max(count, choice + 1);
        choices.computeIfAbsent(id, any -> new BitSet()).set(choice);
        for (Id kind : kinds) {
            choices.computeIfAbsent(kind, any -> new BitSet()).set(choice);
        }
        if (formation) {
            formations.add(choice);
        }
    }

    void enterSupport(Id id, int support) {
        supports.put(id, support);
    }

    /** Who is meant by these names; a name that nothing carries means nobody. */
    Selector selector(List<Id> ids) {
        BitSet chosen = new BitSet();
        BitSet supported = new BitSet();
        for (Id id : ids) {
            BitSet some = choices.get(id);
            if (some != null) {
                chosen.or(some);
            }
            Integer support = supports.get(id);
            if (support != null) {
                supported.set(support);
            }
        }
        return new Selector(ids, chosen, supported, chosen.stream().anyMatch(formations::contains), words(ids));
    }

    /** All units. */
    Selector units() {
        return all(false, "units");
    }

    /** All formations. */
    Selector formations() {
        return all(true, "formations");
    }

    private Selector all(boolean some, String words) {
        BitSet chosen = new BitSet();
        for (int choice = 0; choice < count; choice++) {
            chosen.set(choice, formations.contains(choice) == some);
        }
        return new Selector(List.of(), chosen, new BitSet(), some, words);
    }

    private String words(List<Id> ids) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < ids.size(); i++) {
            if (i > 0) {
                words.append(i == ids.size() - 1 ? " or " : ", ");
            }
            words.append(title(ids.get(i)));
        }
        return words.toString();
    }
}
