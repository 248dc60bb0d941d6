package org.cantonment.stock.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.session.Table.Lump;
import org.cantonment.stock.solve.Covering;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Way;

/** The best evening for lenders that are told: the flow, and a small search over frames that it would build both ways. */
final class Search {

    /** The best flow that can be built, and what no evening of these lenders goes beyond. */
    record Outcome(Flow best, int bound) {
    }

    private static final int PARTINGS = 400;

    private final Table table;
    private final Set<Integer> lending;
    private final int most;
    private final CancelToken cancel;
    private final PriorityQueue<Flow> open = new PriorityQueue<>((a, b) -> a.filled() != b.filled()
            ? b.filled() - a.filled() : Long.compare(a.price(), b.price()));
    private Flow best;
    private int steps;

    private Search(Table table, Set<Integer> lending, int most, CancelToken cancel) {
        this.table = table;
        this.lending = lending;
        this.most = most;
        this.cancel = cancel;
    }

    static Outcome of(Table table, Set<Integer> lending, int most, CancelToken cancel) {
        return new Search(table, lending, most, cancel).run();
    }

    private Outcome run() {
        open.add(Flow.of(table, lending, Settled.NOTHING));
        int bound = open.peek().filled();
        while (!open.isEmpty() && steps < most && better(open.peek())) {
            cancel.check();
            Flow flow = open.poll();
            bound = flow.filled();
            Settled.Meaning doubled = flow.doubled();
            int stuck = doubled == null ? stuck(flow) : -1;
            if (doubled != null) {
                List.of(true, false).forEach(itself -> look(flow.settled().with(doubled, itself)));
            } else if (stuck < 0) {
                best = flow;
            } else {
                part(flow, stuck);
            }
        }
        if (best == null) {
            best = atRest();
        }
        boolean done = open.isEmpty() || !better(open.peek());
        return new Outcome(best, done ? best.filled() : Math.max(best.filled(), bound));
    }

    private boolean better(Flow flow) {
        return best == null || flow.filled() > best.filled()
                || flow.filled() == best.filled() && flow.price() < best.price();
    }

    private void part(Flow flow, int lump) {
        List<int[]> partings = new ArrayList<>();
        spread(table.lumps().get(lump).frames().ways().size(), 0, table.lumps().get(lump).frames().count(),
                new int[table.lumps().get(lump).frames().ways().size()], partings);
        for (int[] parting : partings) {
            look(flow.settled().with(lump, parting));
        }
    }

    private void look(Settled settled) {
        steps++;
        Flow child = Flow.of(table, lending, settled);
        if (better(child)) {
            open.add(child);
        }
    }

    /** Every frame is built; where a cap forbids that, the flow that draws too much is parted further. */
    private static void spread(int ways, int at, int left, int[] parting, List<int[]> into) {
        if (into.size() >= PARTINGS) {
            return;
        }
        if (at == ways - 1) {
            int[] whole = parting.clone();
            whole[at] = left;
            into.add(whole);
            return;
        }
        for (int count = left; count >= 0; count--) {
            parting[at] = count;
            spread(ways, at + 1, left - count, parting, into);
        }
    }

    /** A place whose frames cannot give what is drawn, not parted yet; -1 if all can be built, or nothing is left to part. */
    private int stuck(Flow flow) {
        for (int seat = 0; seat < table.seats().size(); seat++) {
            Map<Id, Integer> drawn = flow.drawn(seat);
            if (!drawn.isEmpty() && !built(flow, seat, drawn)) {
                for (int l = 0; l < table.lumps().size(); l++) {
                    Lump lump = table.lumps().get(l);
                    if (lump.seat() == seat && !flow.settled().parted().containsKey(l) && lump.frames().ways().size() > 1
                            && lump.frames().ways().stream().anyMatch(way -> way.gives().keySet().stream()
                                    .anyMatch(drawn::containsKey))) {
                        return l;
                    }
                }
            }
        }
        return -1;
    }

    private boolean built(Flow flow, int seat, Map<Id, Integer> drawn) {
        List<Id> types = List.copyOf(drawn.keySet());
        List<Covering.Option> options = new ArrayList<>();
        List<Integer> counts = new ArrayList<>();
        List<int[]> places = new ArrayList<>();
        for (int l = 0; l < table.lumps().size(); l++) {
            Lump lump = table.lumps().get(l);
            if (lump.seat() == seat) {
                int[] told = flow.settled().parted().get(l);
                for (int w = 0; w < lump.frames().ways().size(); w++) {
                    Way way = lump.frames().ways().get(w);
                    options.add(new Covering.Option(counts.size(),
                            types.stream().mapToInt(type -> way.gives().getOrDefault(type, 0)).toArray(), 0,
                            told == null ? lump.frames().count() : told[w]));
                    places.add(new int[] {l, w});
                }
                counts.add(lump.frames().count());
            }
        }
        Covering.Limit[] limits = table.caps(seat).stream().map(cap -> limit(cap, places)).toArray(Covering.Limit[]::new);
        return Covering.of(options.toArray(Covering.Option[]::new), counts.stream().mapToInt(Integer::intValue).toArray(),
                limits, types.stream().mapToInt(drawn::get).toArray()).built() != null;
    }

    private Covering.Limit limit(BoxCap cap, List<int[]> places) {
        return new Covering.Limit(cap.most(), places.stream().mapToInt(place -> {
            Lump lump = table.lumps().get(place[0]);
            return !cap.frames().contains(lump.place()) ? 0 : lump.frames().ways().get(place[1]).gives().entrySet().stream()
                    .filter(one -> cap.of().contains(one.getKey())).mapToInt(Map.Entry::getValue).sum();
        }).toArray());
    }

    /** Nothing is built at all: what can always be done. */
    private Flow atRest() {
        Map<Integer, int[]> none = new HashMap<>();
        for (int l = 0; l < table.lumps().size(); l++) {
            none.put(l, new int[table.lumps().get(l).frames().ways().size()]);
        }
        Settled settled = new Settled(none, Map.of());
        for (Flow flow = Flow.of(table, lending, settled);; flow = Flow.of(table, lending, settled)) {
            Settled.Meaning doubled = flow.doubled();
            if (doubled == null) {
                return flow;
            }
            settled = settled.with(doubled, true);
        }
    }
}
