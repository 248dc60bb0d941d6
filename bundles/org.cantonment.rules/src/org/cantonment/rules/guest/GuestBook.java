package org.cantonment.rules.guest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;

/** Who is there, who was not let in, and who was shut out. Serves several threads at once. */
final class GuestBook {

    /** Whose misdeed it was: a plug-in that comes again unchanged is still shut out, a mended one is not. */
    private record Key(String name, Origin origin) {
    }

    /** Who may be asked, and who not: made anew with each change. */
    private record Standing(Map<String, Arrival> asked, List<Refusal> refusals, long version) {
    }

    /** By identity where a check is its own key: foreign code decides what its equals means. */
    private final Map<Object, Arrival> here = new IdentityHashMap<>();
    private final Map<Object, Refusal> unheard = new IdentityHashMap<>();
    private final Map<Origin, Refusal> refused = new HashMap<>();
    private final Map<Key, String> misdeeds = new HashMap<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private volatile Standing standing = new Standing(Map.of(), List.of(), 0);

    Optional<Arrival> find(String name) {
        return Optional.ofNullable(standing.asked().get(name));
    }

    List<KnownCheck> known() {
        return standing.asked().values().stream().map(Arrival::known).toList();
    }

    List<Refusal> refusals() {
        return standing.refusals();
    }

    long version() {
        return standing.version();
    }

    Runnable onChange(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    void enter(Object key, Arrival arrival) {
        change(() -> {
            String before = misdeeds.get(key(arrival));
            if (before != null) {
                arrival.shut(before);
            }
            here.put(key, arrival);
        });
    }

    void refuse(Object key, Refusal refusal) {
        change(() -> {
            if (key instanceof Origin origin) {
                refused.put(origin, refusal);
            } else {
                unheard.put(key, refusal);
            }
        });
    }

    void leave(Object key) {
        boolean known;
        synchronized (this) {
            known = here.containsKey(key) || unheard.containsKey(key) || refused.containsKey(key);
        }
        if (known) {
            change(() -> {
                here.remove(key);
                unheard.remove(key);
                refused.remove(key);
            });
        }
    }

    void shut(Arrival arrival, String how) {
        change(() -> {
            misdeeds.putIfAbsent(key(arrival), how);
            arrival.shut(misdeeds.get(key(arrival)));
        });
    }

    void forgive(String name) {
        change(() -> {
            misdeeds.keySet().removeIf(key -> key.name().equals(name));
            here.values().stream().filter(arrival -> arrival.known().name().equals(name)).forEach(Arrival::forgive);
        });
    }

    private static Key key(Arrival arrival) {
        return new Key(arrival.known().name(), arrival.known().origin());
    }

    private void change(Runnable what) {
        synchronized (this) {
            what.run();
            standing = stand();
        }
        listeners.forEach(Runnable::run);
    }

    private Standing stand() {
        Map<String, Arrival> asked = new TreeMap<>();
        List<Refusal> refusals = new ArrayList<>(refused.values());
        refusals.addAll(unheard.values());
        here.values().stream().sorted(Comparator.comparing(arrival -> arrival.known().origin())).forEach(arrival -> {
            Arrival first = asked.putIfAbsent(arrival.known().name(), arrival);
            if (first != null) {
                refusals.add(taken(arrival.known(), first.known()));
            }
        });
        refusals.sort(null);
        return new Standing(Collections.unmodifiableMap(asked), List.copyOf(refusals), standing.version() + 1);
    }

    private static Refusal taken(KnownCheck late, KnownCheck first) {
        return new Refusal(late.origin(), late.name(), "The check " + late.name() + " of " + late.origin().words()
                + " has the name of a check of " + first.origin().words() + ", so it is not asked; only that one is.");
    }
}
