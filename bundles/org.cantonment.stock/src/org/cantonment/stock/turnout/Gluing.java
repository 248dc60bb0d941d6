package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;

/**
 * Chooses once, for several lists, how frames are built that are glued for good. Each list is asked by itself first; where
 * the answers build the same frames in different ways, the frames are parted in every way there is, the best bound first.
 * The bound of a choice is what the lists fill when each may glue as it likes whatever is not chosen yet.
 */
public final class Gluing {

    /** So many choices are looked at, at the most. */
    public static final int CHOICES = 600;
    /** Frames that can be parted in more ways than this are not parted: the search is cut off there. */
    private static final int PARTINGS = 3_000;

    /** How frames are parted among their ways, by their place in the supply. */
    private record Node(Map<Integer, int[]> parted, List<Turnout> turnouts, int bound, int number) {
    }

    private final Catalogue catalogue;
    private final Supply supply;
    private final List<Task> tasks;
    private final CancelToken cancel;
    private final PriorityQueue<Node> open = new PriorityQueue<>((a, b) -> a.bound() != b.bound()
            ? b.bound() - a.bound() : a.number() - b.number());
    private List<Turnout> best;
    private int filled = -1;
    private int looked;

    private Gluing(Catalogue catalogue, Supply supply, List<Task> tasks, CancelToken cancel) {
        this.catalogue = catalogue;
        this.supply = supply;
        this.tasks = tasks;
        this.cancel = cancel;
    }

    /**
     * The choice that leaves the least short in all lists together.
     *
     * @param choices look at so many at the most, at least 1
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static Together of(Catalogue catalogue, Supply supply, List<Task> tasks, int choices, CancelToken cancel) {
        return new Gluing(catalogue, supply, tasks, cancel).run(choices);
    }

    private Together run(int choices) {
        Node root = look(Map.of());
        inTurn();
        open.add(root);
        int cutOff = 0;
        while (!open.isEmpty() && open.peek().bound() > filled && looked < choices) {
            cancel.check();
            Node node = open.poll();
            int at = closes(node);
            if (at < 0) {
                take(node.turnouts());
            } else {
                List<int[]> partings = partings(at, node.parted());
                if (partings.isEmpty()) {
                    cutOff = Math.max(cutOff, node.bound());
                }
                for (int[] parting : partings) {
                    Map<Integer, int[]> more = new HashMap<>(node.parted());
                    more.put(at, parting);
                    Node child = look(more);
                    if (child.bound() > filled) {
                        open.add(child);
                    }
                }
            }
        }
        int bound = Math.max(filled, Math.max(cutOff, open.isEmpty() ? 0 : open.peek().bound()));
        return new Together(best, builds(best), bound, looked);
    }

    private Node look(Map<Integer, int[]> parted) {
        cancel.check();
        looked++;
        Supply now = parted(parted, false);
        List<Turnout> turnouts = tasks.stream().map(task -> Depot.of(catalogue, now, task.allowance())
                .turnout(task.needs(), cancel)).toList();
        return new Node(parted, turnouts, turnouts.stream().mapToInt(Turnout::bound).sum(), looked);
    }

    private void take(List<Turnout> turnouts) {
        int all = turnouts.stream().mapToInt(Turnout::filled).sum();
        if (all > filled) {
            filled = all;
            best = turnouts;
        }
    }

    /** The supply where these frames have been told how they are built; what is not told is still open, or out of it. */
    private Supply parted(Map<Integer, int[]> parted, boolean restIsOpen) {
        List<Frames> frames = new ArrayList<>();
        List<List<Integer>> places = new ArrayList<>();
        for (int f = 0; f < supply.frames().size(); f++) {
            Frames one = supply.frames().get(f);
            int before = frames.size();
            int[] ways = parted.get(f);
            if (ways == null) {
                frames.add(one);
            } else {
                for (int w = 0; w < ways.length; w++) {
                    if (ways[w] > 0) {
                        frames.add(new Frames(one.part(), ways[w], one.guessed(), List.of(one.ways().get(w)), -1,
                                one.fixing()));
                    }
                }
                int rest = one.count() - Arrays.stream(ways).sum();
                if (rest > 0 && restIsOpen) {
                    frames.add(new Frames(one.part(), rest, one.guessed(), one.ways(), -1, one.fixing()));
                }
            }
            List<Integer> here = new ArrayList<>();
            for (int at = before; at < frames.size(); at++) {
                here.add(at);
            }
            places.add(here);
        }
        List<BoxCap> caps = supply.caps().stream().map(cap -> new BoxCap(cap.cap(), cap.most(), cap.of(),
                cap.frames().stream().flatMap(at -> places.get(at).stream()).toList())).toList();
        return new Supply(supply.stacks(), frames, caps, supply.findings());
    }

    /** The first frames that the lists would build in different ways; -1 if one choice serves all. */
    private int closes(Node node) {
        Map<Id, Map<Id, Integer>> wanted = wanted(node.turnouts());
        for (int f = 0; f < supply.frames().size(); f++) {
            Frames one = supply.frames().get(f);
            if (permanent(one) && !node.parted().containsKey(f) && one.ways().size() > 1
                    && wanted.containsKey(one.part()) && torn(one.part(), wanted.get(one.part()), node)) {
                return f;
            }
        }
        return -1;
    }

    private static boolean permanent(Frames one) {
        return one.fixing() == Fixing.GLUED && one.built() < 0;
    }

    private boolean torn(Id part, Map<Id, Integer> wanted, Node node) {
        boolean capped = supply.caps().stream().flatMap(cap -> cap.frames().stream())
                .anyMatch(at -> supply.frames().get(at).part().equals(part));
        long askers = node.turnouts().stream().filter(turnout -> turnout.builds().stream()
                .anyMatch(build -> build.part().equals(part))).count();
        int all = 0;
        for (Frames one : supply.frames()) {
            all += permanent(one) && one.part().equals(part) ? one.count() : 0;
        }
        return wanted.values().stream().mapToInt(Integer::intValue).sum() > all || capped && askers > 1;
    }

    /** Of each way of each part as many as any list wants. */
    private static Map<Id, Map<Id, Integer>> wanted(List<Turnout> turnouts) {
        Map<Id, Map<Id, Integer>> most = new TreeMap<>();
        for (Turnout turnout : turnouts) {
            Map<Id, Map<Id, Integer>> here = new LinkedHashMap<>();
            turnout.builds().stream().filter(build -> build.fixing() == Fixing.GLUED && !build.rebuilt()).forEach(build ->
                    here.computeIfAbsent(build.part(), id -> new TreeMap<>()).merge(build.build(), build.frames(), Integer::sum));
            here.forEach((part, ways) -> ways.forEach((way, count) -> most.computeIfAbsent(part, id -> new TreeMap<>())
                    .merge(way, count, Math::max)));
        }
        return most;
    }

    private static List<Build> builds(List<Turnout> turnouts) {
        List<Build> builds = new ArrayList<>();
        wanted(turnouts).forEach((part, ways) -> ways.forEach((way, count) ->
                builds.add(new Build(part, way, count, false, Fixing.GLUED))));
        return builds;
    }

    /** Every way to part frames that keeps to the caps; ways by which nothing is built that any list can use are left out. */
    private List<int[]> partings(int at, Map<Integer, int[]> before) {
        Frames frames = supply.frames().get(at);
        List<Integer> useful = new ArrayList<>();
        for (int w = 0; w < frames.ways().size(); w++) {
            if (frames.ways().get(w).yields().keySet().stream().anyMatch(this::useful)) {
                useful.add(w);
            }
        }
        boolean capped = supply.caps().stream().anyMatch(cap -> cap.frames().contains(at));
        List<int[]> all = new ArrayList<>();
        spread(useful, 0, frames.count(), capped, new int[frames.ways().size()], all);
        if (all.size() > PARTINGS) {
            return List.of();
        }
        all.removeIf(parting -> {
            Map<Integer, int[]> more = new HashMap<>(before);
            more.put(at, parting);
            return !withinCaps(more);
        });
        return all;
    }

    private boolean withinCaps(Map<Integer, int[]> parted) {
        for (BoxCap cap : supply.caps()) {
            long built = 0;
            for (int at : cap.frames()) {
                int[] ways = parted.getOrDefault(at, new int[0]);
                for (int w = 0; w < ways.length; w++) {
                    built += (long) ways[w] * supply.frames().get(at).ways().get(w).gives().entrySet().stream()
                            .filter(one -> cap.of().contains(one.getKey())).mapToInt(Map.Entry::getValue).sum();
                }
            }
            if (built > cap.most()) {
                return false;
            }
        }
        return true;
    }

    private boolean useful(Id type) {
        return tasks.stream().anyMatch(task -> Depot.of(catalogue, supply, task.allowance()).useful(task.needs())
                .contains(type));
    }

    private static void spread(
            List<Integer> ways, int at, int left, boolean slack, int[] parting, List<int[]> into) {
        if (into.size() > PARTINGS || ways.isEmpty()) {
            return;
        }
        if (at == ways.size()) {
            into.add(parting.clone());
            return;
        }
        boolean all = at == ways.size() - 1 && !slack;
        for (int count = left; count >= (all ? left : 0); count--) {
            parting[ways.get(at)] = count;
            spread(ways, at + 1, left - count, slack, parting, into);
        }
        parting[ways.get(at)] = 0;
    }

    /** A choice to begin with: the first list glues what it wants, the next what is left, and so on. */
    private void inTurn() {
        Map<Integer, int[]> parted = new HashMap<>();
        for (Task task : tasks) {
            commit(Depot.of(catalogue, parted(parted, true), task.allowance()).turnout(task.needs(), cancel), parted);
        }
        for (int f = 0; f < supply.frames().size(); f++) {
            Frames one = supply.frames().get(f);
            if (permanent(one) && one.ways().size() > 1) {
                parted.computeIfAbsent(f, at -> new int[one.ways().size()]);
            }
        }
        take(look(parted).turnouts());
    }

    private void commit(Turnout turnout, Map<Integer, int[]> parted) {
        for (Build build : turnout.builds()) {
            int wanted = build.frames();
            for (int f = 0; f < supply.frames().size() && wanted > 0; f++) {
                Frames one = supply.frames().get(f);
                for (int w = 0; w < one.ways().size() && permanent(one) && one.part().equals(build.part()); w++) {
                    if (one.ways().get(w).build().equals(build.build())) {
                        wanted -= commit(f, w, wanted, parted);
                    }
                }
            }
        }
    }

    private int commit(int at, int way, int wanted, Map<Integer, int[]> parted) {
        Frames one = supply.frames().get(at);
        int[] ways = parted.getOrDefault(at, new int[one.ways().size()]).clone();
        int have = Math.min(wanted, ways[way]);
        int more = Math.min(wanted - have, one.count() - Arrays.stream(ways).sum());
        ways[way] += more;
        Map<Integer, int[]> trial = new HashMap<>(parted);
        trial.put(at, ways);
        if (more > 0 && withinCaps(trial)) {
            parted.put(at, ways);
            return have + more;
        }
        return have;
    }
}
