package org.cantonment.stock.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** One shelf while deeds move things on it. What is taken is taken as sure first, then what is guessed, then what is unknown. */
final class Pile {

    private static final Id LAID = Id.of("Laid");

    private final Catalogue catalogue;
    private final Map<Id, Stack> stacks = new TreeMap<>();
    /** A place that is empty stays, so that caps find their frames. */
    private final List<Frames> frames = new ArrayList<>();
    private final List<BoxCap> caps = new ArrayList<>();

    Pile(Catalogue catalogue, Supply supply) {
        this.catalogue = catalogue;
        put(supply);
    }

    /** What so many of a thing are, whatever it is: a box its contents, a part its frames. */
    static Supply things(Catalogue catalogue, Id what, int count, Optional<LocalDate> came) {
        return Supply.of(catalogue, List.of(Shelf.plain(LAID, List.of(Holding.plain(LAID.line(1), count, what, came)))));
    }

    void put(Supply more) {
        int before = frames.size();
        more.stacks().forEach(this::put);
        frames.addAll(more.frames());
        more.caps().forEach(cap -> caps.add(new BoxCap(cap.cap(), cap.most(), cap.of(),
                cap.frames().stream().map(at -> at + before).toList())));
    }

    private void put(Stack more) {
        stacks.merge(more.what(), more, (a, b) -> new Stack(a.what(), a.known() + b.known(), a.guessed() + b.guessed(),
                a.unknown() + b.unknown()));
    }

    /** How many of a thing there are, counted or not; frames of a part, and for a box how many can be made up. */
    int has(Id what) {
        if (catalogue.box(what).isPresent()) {
            return boxes(things(catalogue, what, 1, Optional.empty()));
        }
        if (catalogue.part(what).isPresent()) {
            return unbuilt(what);
        }
        return stacked(what) + Carpenter.most(this, what);
    }

    int stacked(Id what) {
        Stack stack = stacks.get(what);
        return stack == null ? 0 : stack.counted() + stack.unknown();
    }

    /** How many there may be that nobody has counted. */
    int uncounted(Id what) {
        Stack stack = stacks.get(what);
        return stack == null ? 0 : stack.unknown();
    }

    private int unbuilt(Id part) {
        int count = 0;
        for (Frames one : frames) {
            count += one != null && one.part().equals(part) ? one.count() : 0;
        }
        return count;
    }

    private int boxes(Supply box) {
        int most = box.stacks().isEmpty() && box.frames().isEmpty() ? 0 : Integer.MAX_VALUE;
        for (Stack one : box.stacks()) {
            most = one.counted() == 0 ? most : Math.min(most, stacked(one.what()) / one.counted());
        }
        Map<Id, Integer> parts = new TreeMap<>();
        box.frames().forEach(one -> parts.merge(one.part(), one.count(), Integer::sum));
        for (Map.Entry<Id, Integer> part : parts.entrySet()) {
            most = Math.min(most, unbuilt(part.getKey()) / part.getValue());
        }
        return most;
    }

    /** Takes as many as there are, at most so many; what was in somebody's hand is known from then on. */
    Supply take(Id what, int count) {
        int taken = Math.min(count, has(what));
        if (taken < 1) {
            return Supply.NONE;
        }
        if (catalogue.box(what).isPresent()) {
            Supply contents = things(catalogue, what, taken, Optional.empty());
            contents.stacks().forEach(one -> draw(one.what(), one.counted()));
            contents.frames().forEach(one -> frames(one.part(), one.count()));
            return contents;
        }
        if (catalogue.part(what).isPresent()) {
            return new Supply(List.of(), frames(what, taken), List.of(), List.of());
        }
        if (taken > stacked(what)) {
            Carpenter.make(this, Map.of(what, taken - stacked(what)), true);
        }
        draw(what, taken);
        return Supply.pieces(Map.of(what, taken));
    }

    private void draw(Id what, int count) {
        Stack stack = stacks.get(what);
        if (stack == null) {
            return;
        }
        int known = Math.min(count, stack.known());
        int guessed = Math.min(count - known, stack.guessed());
        int unknown = Math.min(count - known - guessed, stack.unknown());
        stacks.put(what, new Stack(what, stack.known() - known, stack.guessed() - guessed, stack.unknown() - unknown));
    }

    private List<Frames> frames(Id part, int count) {
        List<Frames> taken = new ArrayList<>();
        int left = count;
        for (int pass = 0; pass < 2; pass++) {
            for (int at = 0; at < frames.size() && left > 0; at++) {
                Frames one = frames.get(at);
                if (one != null && one.part().equals(part) && one.built() < 0 == (pass == 0)) {
                    int some = Math.min(left, one.count());
                    taken.add(remove(at, some));
                    left -= some;
                }
            }
        }
        return taken;
    }

    /** Takes so many frames from their place. */
    Frames remove(int at, int count) {
        Frames one = frames.get(at);
        frames.set(at, count == one.count() ? null : of(one, one.count() - count, one.built()));
        return of(one, count, one.built());
    }

    private static Frames of(Frames one, int count, int built) {
        return new Frames(one.part(), count, one.guessed(), one.ways(), built, one.fixing());
    }

    /** The frames, null where none are left. */
    List<Frames> frames() {
        return frames;
    }

    List<BoxCap> caps() {
        return caps;
    }

    /** Frames of a place are built in a way, and so much of that was meant. */
    void build(int at, int way, int count, Map<Id, Integer> meant, boolean glue) {
        Frames taken = remove(at, count);
        Way how = taken.ways().get(way);
        for (int c = 0; c < caps.size(); c++) {
            BoxCap cap = caps.get(c);
            if (cap.frames().contains(at)) {
                int weight = how.gives().entrySet().stream().filter(one -> cap.of().contains(one.getKey()))
                        .mapToInt(Map.Entry::getValue).sum();
                caps.set(c, new BoxCap(cap.cap(), Math.max(0, cap.most() - weight * count), cap.of(), cap.frames()));
            }
        }
        if (taken.fixing() != Fixing.GLUED && !glue) {
            frames.add(of(taken, count, way));
            return;
        }
        how.gives().forEach((type, gives) -> {
            int wanted = Math.min(meant.getOrDefault(type, 0), gives * count);
            if (wanted > 0) {
                put(taken.guessed() ? new Stack(type, 0, wanted, 0) : new Stack(type, wanted, 0, 0));
            }
        });
    }

    /** So many there are, no more and no fewer; what can be rebuilt into it counts beside them. */
    void count(Id what, int count) {
        if (catalogue.part(what).isPresent()) {
            int there = unbuilt(what);
            if (there > count) {
                frames(what, there - count);
            } else if (there < count) {
                put(things(catalogue, what, count - there, Optional.empty()));
            }
        } else {
            stacks.put(what, new Stack(what, count, 0, 0));
        }
    }

    Supply supply() {
        List<Frames> left = new ArrayList<>();
        int[] places = new int[frames.size()];
        for (int at = 0; at < places.length; at++) {
            places[at] = frames.get(at) == null ? -1 : left.size();
            if (frames.get(at) != null) {
                left.add(frames.get(at));
            }
        }
        List<BoxCap> over = new ArrayList<>();
        for (BoxCap cap : caps) {
            List<Integer> under = cap.frames().stream().map(at -> places[at]).filter(at -> at >= 0).toList();
            if (!under.isEmpty()) {
                over.add(new BoxCap(cap.cap(), cap.most(), cap.of(), under));
            }
        }
        List<Stack> all = stacks.values().stream().filter(one -> one.counted() + one.unknown() > 0).toList();
        return new Supply(all, left, over, List.of());
    }
}
