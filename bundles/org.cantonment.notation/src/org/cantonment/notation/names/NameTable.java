package org.cantonment.notation.names;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;

/**
 * All names of a folder of books: one look-up for one name. Attached to the resource set that holds the books.
 *
 * <p>Names are found without regard to upper and lower case, so that a name typed in small letters is understood; names
 * that differ in nothing else are the same name. Not safe for use by several threads at once.
 */
public final class NameTable extends AdapterImpl {

    private final Map<String, List<Entry>> byName = new HashMap<>();
    private final Map<Resource, List<Entry>> byBook = new LinkedHashMap<>();
    private final Map<String, List<Entry>> byOwner = new HashMap<>();
    private final Map<Resource, Set<String>> asked = new HashMap<>();
    private final Set<String> changed = new HashSet<>();

    /**
     * @param set a resource set
     * @return its table, a new and empty one if it had none
     */
    public static NameTable of(ResourceSet set) {
        for (var adapter : set.eAdapters()) {
            if (adapter instanceof NameTable table) {
                return table;
            }
        }
        NameTable table = new NameTable();
        set.eAdapters().add(table);
        return table;
    }

    @Override
    public boolean isAdapterForType(Object type) {
        return type == NameTable.class;
    }

    /**
     * Takes in what a book now names, in place of what it named before. What the book asked for is forgotten too.
     */
    public void put(Resource book, List<Entry> entries) {
        asked.remove(book);
        List<Entry> before = byBook.put(book, entries);
        noteChanges(before == null ? List.of() : before, entries);
        if (before != null) {
            before.forEach(this::forget);
        }
        for (Entry entry : entries) {
            Map<String, List<Entry>> table = entry.owner().isEmpty() ? byName : byOwner;
            table.computeIfAbsent(key(entry), k -> new ArrayList<>(1)).add(entry);
        }
    }

    /** Forgets a book. */
    public void remove(Resource book) {
        asked.remove(book);
        List<Entry> before = byBook.remove(book);
        if (before != null) {
            noteChanges(before, List.of());
            before.forEach(this::forget);
        }
    }

    /** Names that came, went, or changed their kind or book: whoever asked for them must ask again. */
    private void noteChanges(List<Entry> before, List<Entry> after) {
        Map<String, String> old = signatures(before);
        Map<String, String> now = signatures(after);
        old.forEach((name, signature) -> {
            if (!signature.equals(now.get(name))) {
                changed.add(name);
            }
        });
        now.keySet().stream().filter(name -> !old.containsKey(name)).forEach(changed::add);
    }

    /** Notes that a book asked for a name, found or not: the book is stale once the name changes. */
    public void asks(Resource book, String name) {
        asked.computeIfAbsent(book, b -> new HashSet<>()).add(fold(name));
    }

    /**
     * @return the books that asked for a name that has changed since this was called last, in the order in which they
     *         came in; their references must be looked up again
     */
    public List<Resource> takeStale() {
        List<Resource> stale = new ArrayList<>();
        if (!changed.isEmpty()) {
            for (Resource book : byBook.keySet()) {
                Set<String> names = asked.get(book);
                if (names != null && !Collections.disjoint(names, changed)) {
                    stale.add(book);
                }
            }
            changed.clear();
        }
        return stale;
    }

    private void forget(Entry entry) {
        Map<String, List<Entry>> table = entry.owner().isEmpty() ? byName : byOwner;
        List<Entry> same = table.get(key(entry));
        same.remove(entry);
        if (same.isEmpty()) {
            table.remove(key(entry));
        }
    }

    /**
     * @param name a name, of any case
     * @param type what is wanted
     * @return every thing of that name that is of the wanted kind, in the order in which the books came in
     */
    public List<Entry> find(String name, EClass type) {
        return ofType(byName.get(fold(name)), type);
    }

    /**
     * @param owner the name of a unit, formation or box
     * @param name  the name of an option, billet or printing of it
     * @param type  what is wanted
     * @return every such thing, in whatever book
     */
    public List<Entry> findIn(String owner, String name, EClass type) {
        return ofType(byOwner.get(fold(owner) + '#' + fold(name)), type);
    }

    private static List<Entry> ofType(List<Entry> all, EClass type) {
        if (all == null) {
            return List.of();
        }
        List<Entry> found = new ArrayList<>(all.size());
        for (Entry entry : all) {
            if (type.isSuperTypeOf(entry.type())) {
                found.add(entry);
            }
        }
        return found;
    }

    /** @return all things of a kind that are known by their bare name, book by book, in text order */
    public List<Entry> all(EClass type) {
        List<Entry> found = new ArrayList<>();
        for (List<Entry> entries : byBook.values()) {
            for (Entry entry : entries) {
                if (entry.owner().isEmpty() && type.isSuperTypeOf(entry.type())) {
                    found.add(entry);
                }
            }
        }
        return found;
    }

    /** @return all things of a kind that belong to some owner, book by book, in text order */
    public List<Entry> allOwned(EClass type) {
        List<Entry> found = new ArrayList<>();
        byBook.values().forEach(entries -> entries.stream()
                .filter(entry -> !entry.owner().isEmpty() && type.isSuperTypeOf(entry.type())).forEach(found::add));
        return found;
    }

    /** @return all things of a kind that belong to the named owner */
    public List<Entry> allIn(String owner, EClass type) {
        List<Entry> found = new ArrayList<>();
        for (List<Entry> entries : byBook.values()) {
            for (Entry entry : entries) {
                if (!entry.owner().isEmpty() && fold(entry.owner()).equals(fold(owner))
                        && type.isSuperTypeOf(entry.type())) {
                    found.add(entry);
                }
            }
        }
        return found;
    }

    /** @return the books that are held, in the order in which they came in */
    public Collection<Resource> books() {
        return byBook.keySet();
    }

    private static Map<String, String> signatures(List<Entry> entries) {
        Map<String, String> all = new HashMap<>();
        for (Entry entry : entries) {
            all.merge(fold(entry.name()), entry.owner() + ':' + entry.type().getName() + '@' + entry.book() + '!'
                    + entry.name(), String::concat);
        }
        return all;
    }

    private static String key(Entry entry) {
        return entry.owner().isEmpty() ? fold(entry.name()) : fold(entry.owner()) + '#' + fold(entry.name());
    }

    /** Names are compared after this: composed (NFC) and in small letters. */
    public static String fold(String name) {
        for (int i = 0; i < name.length(); i++) {
            if (name.charAt(i) > 127) {
                return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
            }
        }
        return name.toLowerCase(Locale.ROOT);
    }
}
