package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.solve.MinCostFlow;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.turnout.Instance.Room;
import org.cantonment.stock.turnout.Reason.Block;
import org.cantonment.stock.turnout.Reason.Kind;
import org.cantonment.stock.turnout.Reason.Source;

/**
 * Reads a least cut: the needs that could still be met if there were one piece more, and all that may fill them. Whatever
 * hangs together is one block; what its needs ask for less what there is for them is what it lacks.
 */
final class Blocks {

    private final Network network;
    private final Instance in;
    private final Labels labels;
    private final int[] leader;

    private Blocks(Network network) {
        this.network = network;
        this.in = network.instance();
        this.labels = network.labels();
        leader = new int[network.nodes()];
        for (int i = 0; i < leader.length; i++) {
            leader[i] = i;
        }
    }

    /** The blocks of a flow, in the order of their first needs; none if nothing is short. */
    static List<Block> of(Network network) {
        return network.filled() == network.instance().needed() ? List.of() : new Blocks(network).read();
    }

    private List<Block> read() {
        MinCostFlow flow = network.flow();
        boolean[] reaching = network.reaching();
        for (int arc = 0; arc < flow.arcs(); arc += 2) {
            if (inner(flow, arc) && reaching[flow.source(arc)] && reaching[flow.target(arc)]) {
                leader[find(flow.source(arc))] = find(flow.target(arc));
            }
        }
        Map<Integer, List<Integer>> members = new LinkedHashMap<>();
        for (int node = 2; node < network.nodes(); node++) {
            int one = network.classOf(node);
            if (one >= 0 && reaching[node]) {
                members.computeIfAbsent(find(node), root -> new ArrayList<>()).add(one);
            }
        }
        List<Block> blocks = new ArrayList<>();
        members.forEach((root, classes) -> blocks.add(block(root, classes, reaching)));
        return blocks;
    }

    private boolean inner(MinCostFlow flow, int arc) {
        return flow.source(arc) >= 2 && labels.kind(arc) != Labels.Kind.NEED;
    }

    private Block block(int root, List<Integer> classes, boolean[] reaching) {
        List<Requirement> needs = new ArrayList<>();
        int needed = 0;
        for (int c : classes) {
            needs.addAll(in.classes().get(c).needs());
            needed += in.classes().get(c).count();
        }
        List<Source> from = new ArrayList<>();
        MinCostFlow flow = network.flow();
        for (int arc = 0; arc < flow.arcs(); arc += 2) {
            int to = flow.target(arc);
            if (reaching[to] && !reaching[flow.source(arc)] && labels.kind(arc) != Labels.Kind.NEED && find(to) == root) {
                add(from, arc);
            }
        }
        return new Block(needs, from, needed, from.stream().mapToInt(Source::pieces).sum());
    }

    private void add(List<Source> from, int arc) {
        int pieces = network.flow().flow(arc);
        int subject = labels.subject(arc);
        switch (labels.kind(arc)) {
            case STACK -> stack(from, subject, pieces, labels.detail(arc) == 0 ? in.unknown()[subject] : 0);
            case FRAMES -> frames(from, subject, pieces);
            case FRAMES_AS -> framesAs(from, subject, labels.detail(arc), pieces);
            case FRAMES_CAPPED -> put(from, new Source(Kind.CAPPED, in.rooms().get(labels.detail(arc)).cap(), pieces, 0,
                    in.lumps().get(subject).frames().count()));
            case TURN -> put(from, new Source(Kind.CONVERSION, in.turns().get(subject).conversion().line(), pieces, 0, 0));
            case SHARE -> put(from, new Source(Kind.SHARE, in.hubs().get(subject).line().line(), pieces, 0, 0));
            default -> throw new IllegalStateException("A least cut never goes through " + labels.kind(arc));
        }
    }

    /** Known and guessed pieces of a type are one source. */
    private void stack(List<Source> from, int type, int pieces, int perhaps) {
        int last = from.size() - 1;
        if (last >= 0 && from.get(last).kind() == Kind.PIECES && from.get(last).what().equals(in.types().get(type))) {
            Source before = from.remove(last);
            put(from, new Source(Kind.PIECES, before.what(), before.pieces() + pieces, before.perhaps() + perhaps, 0));
        } else {
            put(from, new Source(Kind.PIECES, in.types().get(type), pieces, perhaps, 0));
        }
    }

    private void frames(List<Source> from, int lump, int pieces) {
        Frames frames = in.lumps().get(lump).frames();
        put(from, new Source(Kind.FRAMES, frames.part(), pieces, 0, frames.count()));
    }

    /** What limits frames built as one type is a cap, if there is one so low. */
    private void framesAs(List<Source> from, int lump, int type, int pieces) {
        Optional<Room> cap = in.rooms().stream()
                .filter(room -> room.lumps().contains(lump) && room.types()[type] && pieces <= room.most()
                        && in.lumps().get(lump).frames().count() > pieces).findFirst();
        if (cap.isPresent()) {
            put(from, new Source(Kind.CAPPED, cap.get().cap(), pieces, 0, in.lumps().get(lump).frames().count()));
        } else {
            frames(from, lump, pieces);
        }
    }

    private static void put(List<Source> from, Source source) {
        if (source.pieces() > 0 || source.perhaps() > 0) {
            from.add(source);
        }
    }

    private int find(int node) {
        int at = node;
        while (leader[at] != at) {
            leader[at] = leader[leader[at]];
            at = leader[at];
        }
        return at;
    }
}
