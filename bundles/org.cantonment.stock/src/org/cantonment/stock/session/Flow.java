package org.cantonment.stock.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.StandIn;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.session.Table.Lump;
import org.cantonment.stock.solve.MinCostFlow;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Way;

/**
 * Pieces to needs, for lenders that are told and frames that are parted among their ways as far as that is settled: as good
 * as any evening of that kind can be, and an evening itself if what it draws from frames can be built.
 */
final class Flow {

    private static final int SOURCE = 0;
    private static final int SINK = 1;
    private static final int ENDLESS = Integer.MAX_VALUE / 4;

    /** Pieces of a type that a lender has; his own unbuilt ones apart. */
    private record Key(int lender, Id type, boolean unbuilt) {
    }

    private record Arc(int arc, Key key, int want, boolean exact) {
    }

    private final Table table;
    private final Set<Integer> lending;
    private final Settled settled;
    private final long dear;
    private final Map<Key, Integer> nodeOf = new LinkedHashMap<>();
    private final Map<Id, List<Key>> ofType = new TreeMap<>();
    private final List<Arc> direct = new ArrayList<>();
    private final List<long[]> laid = new ArrayList<>();
    private int nodes;
    private int filled;
    private long price;
    private MinCostFlow flow;
    private int[] wantNode;

    private Flow(Table table, Set<Integer> lending, Settled settled) {
        this.table = table;
        this.lending = lending;
        this.settled = settled;
        this.dear = 4L * (2L * table.wants().size() + table.seats().size() + 4);
    }

    /**
     * @param lending the lenders who may lend
     * @param settled how frames are parted and what types mean, as far as that is settled
     */
    static Flow of(Table table, Set<Integer> lending, Settled settled) {
        Flow flow = new Flow(table, lending, settled);
        flow.run();
        return flow;
    }

    private void run() {
        nodes = 2;
        wantNode = new int[table.wants().size()];
        for (int w = 0; w < wantNode.length; w++) {
            wantNode[w] = nodes++;
            lay(wantNode[w], SINK, table.wants().get(w).count(), 0);
        }
        for (int l = 0; l < table.lenders().size(); l++) {
            for (Stack stack : table.lenders().get(l).supply().stacks()) {
                if (l < table.seats().size() || lending.contains(l) || !table.lenders().get(l).sharing().isEmpty()) {
                    int node = node(new Key(l, stack.what(), false));
                    lay(SOURCE, node, stack.known(), 0);
                    lay(SOURCE, node, stack.guessed(), dear);
                }
            }
        }
        for (int l = 0; l < table.lumps().size(); l++) {
            lump(l);
        }
        for (int w = 0; w < wantNode.length; w++) {
            want(w);
        }
        flow = new MinCostFlow(nodes);
        laid.forEach(arc -> flow.arc((int) arc[0], (int) arc[1], (int) arc[2], arc[3]));
        filled = flow.run(SOURCE, SINK);
        for (int i = 0; i < laid.size(); i++) {
            price += laid.get(i)[3] * flow.flow(2 * i);
        }
    }

    private int lay(int from, int target, int capacity, long cost) {
        laid.add(new long[] {from, target, capacity, cost});
        return 2 * (laid.size() - 1);
    }

    private int node(Key key) {
        return nodeOf.computeIfAbsent(key, one -> {
            ofType.computeIfAbsent(key.type(), type -> new ArrayList<>()).add(key);
            return nodes++;
        });
    }

    private void lump(int l) {
        Lump lump = table.lumps().get(l);
        int node = nodes++;
        Map<Id, Integer> most = new TreeMap<>();
        int total = 0;
        List<Way> ways = lump.frames().ways();
        int[] told = settled.parted().get(l);
        for (int w = 0; w < ways.size(); w++) {
            int frames = told == null ? lump.frames().count() : told[w];
            int all = ways.get(w).gives().values().stream().mapToInt(Integer::intValue).sum() * frames;
            total = told == null ? Math.max(total, all) : total + all;
            ways.get(w).gives().forEach((type, gives) -> most.merge(type, gives * frames,
                    told == null ? Math::max : Integer::sum));
        }
        // What is lent must be built, so what comes out of frames stays with its owner.
        lay(SOURCE, node, total, lump.frames().guessed() ? dear : 0);
        for (Map.Entry<Id, Integer> one : most.entrySet()) {
            Key key = new Key(lump.seat(), one.getKey(), true);
            boolean asItIs = lump.frames().built() >= 0
                    && ways.get(lump.frames().built()).gives().containsKey(one.getKey());
            lay(node, node(key), one.getValue(), asItIs ? 0 : 1);
        }
    }

    private void want(int w) {
        Want want = table.wants().get(w);
        want.accepted().types().forEach((type, truth) -> offers(type).forEach(key -> arc(key, w, truth)));
        List<StandIn> lines = table.seats().get(want.seat()).allowance().standIns();
        want.accepted().standIns().forEach((line, types) -> {
            int target = wantNode[w];
            if (lines.get(line).percent().isPresent()) {
                target = nodes++;
                lay(target, wantNode[w], lines.get(line).most(want.count()), 0);
            }
            for (Id type : types) {
                if (!want.accepted().types().containsKey(type)) {
                    for (Key key : offers(type)) {
                        arc(key, w, target, Truth.STAND_IN);
                    }
                }
            }
        });
    }

    private List<Key> offers(Id type) {
        return ofType.getOrDefault(type, List.of());
    }

    private void arc(Key key, int w, Truth truth) {
        arc(key, w, wantNode[w], truth);
    }

    private void arc(Key key, int w, int target, Truth truth) {
        int seat = table.wants().get(w).seat();
        boolean own = table.owns(key.lender(), seat);
        Boolean itself = settled.itself().get(new Settled.Meaning(seat, key.type()));
        boolean means = itself == null || itself == (truth == Truth.EXACT);
        if (means && (own || !key.unbuilt() && lending.contains(key.lender()))) {
            long cost = (own ? 0 : dear * dear * dear) + truth.ordinal() * dear * dear;
            direct.add(new Arc(lay(nodeOf.get(key), target, ENDLESS, cost), key, w, truth == Truth.EXACT));
        }
    }

    int filled() {
        return filled;
    }

    long price() {
        return price;
    }

    Settled settled() {
        return settled;
    }

    /** A type that stands for itself and for others at one table where it may not; null if there is none. */
    Settled.Meaning doubled() {
        Set<Settled.Meaning> itself = new HashSet<>();
        Set<Settled.Meaning> others = new HashSet<>();
        for (Arc arc : direct) {
            int seat = table.wants().get(arc.want()).seat();
            if (table.seats().get(seat).allowance().oneTable() && flow.flow(arc.arc()) > 0) {
                Settled.Meaning meaning = new Settled.Meaning(seat, arc.key().type());
                (arc.exact() ? itself : others).add(meaning);
                if (itself.contains(meaning) && others.contains(meaning)) {
                    return meaning;
                }
            }
        }
        return null;
    }

    /** How many of each type a seat draws out of frames that are not parted yet, or out of all. */
    Map<Id, Integer> drawn(int seat) {
        Map<Id, Integer> drawn = new TreeMap<>();
        for (Arc arc : direct) {
            if (arc.key().unbuilt() && arc.key().lender() == seat && flow.flow(arc.arc()) > 0) {
                drawn.merge(arc.key().type(), flow.flow(arc.arc()), Integer::sum);
            }
        }
        return drawn;
    }

    /** Who lends what to whom; what several share goes to each of them, too, and is not lent. */
    List<Lent> moves() {
        Map<Lent, Integer> counts = new TreeMap<>(Comparator.comparing(Lent::from).thenComparing(Lent::to)
                .thenComparing(Lent::type));
        for (Arc arc : direct) {
            int seat = table.wants().get(arc.want()).seat();
            if (arc.key().lender() != seat && flow.flow(arc.arc()) > 0) {
                counts.merge(new Lent(table.lenders().get(arc.key().lender()).who(), table.seats().get(seat).player(),
                        arc.key().type(), 0), flow.flow(arc.arc()), Integer::sum);
            }
        }
        return counts.entrySet().stream().map(one -> new Lent(one.getKey().from(), one.getKey().to(), one.getKey().type(),
                one.getValue())).toList();
    }

    /** How many stand for a want, by type. */
    Map<Id, Integer> standing(int want) {
        Map<Id, Integer> standing = new TreeMap<>();
        for (Arc arc : direct) {
            if (arc.want() == want && flow.flow(arc.arc()) > 0) {
                standing.merge(arc.key().type(), flow.flow(arc.arc()), Integer::sum);
            }
        }
        return standing;
    }

    /** The wants that something more would help. */
    boolean[] shortWants() {
        boolean[] reaching = flow.reaching(SINK);
        boolean[] wants = new boolean[wantNode.length];
        for (int w = 0; w < wants.length; w++) {
            wants[w] = reaching[wantNode[w]];
        }
        return wants;
    }
}
