package org.cantonment.rules.muster;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Selector;

/** A list, or one contingent of it, laid out under a ruling. Counts and sums are gathered once. */
public final class Muster {

    /** No multiplication of counts goes beyond this; a list that would is found at fault. */
    public static final long MOST = Span.UNBOUNDED;

    private final Ruling ruling;
    private final Id id;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Node> formations;
    private final long[] counts;
    private final long[] points;
    private final int[] choiceOf;
    private final Counts within;
    private final Tally tally;
    private long[] strengths;
    private final List<Unpriced> unpriced = new ArrayList<>(0);

    private Muster(Ruling ruling, Id id, Body body) {
        this.ruling = ruling;
        this.id = id;
        lay(body, -1, 1, false);
        counts = new long[ruling.choices().size()];
        formations = nodes.stream().filter(node -> node.formation() != null).toList();
        choiceOf = Counts.choices(nodes);
        within = new Counts(nodes, counts.length);
        points = new long[counts.length];
        for (Node node : nodes) {
            if (node.choice != null) {
                counts[node.choice.index()] += node.copies;
            }
        }
        Pricer pricer = new Pricer(this);
        pricer.price();
        new Surcharger(this, pricer).price();
        tally = pricer.tally();
    }

    /** Notes that an entry costs so many points more. */
    void charge(Node node, long more) {
        node.points += more;
        points[node.choice.index()] += more;
    }

    /** Prices that could not be worked out. */
    public List<Unpriced> unpriced() {
        return unpriced;
    }

    /** Lays out what stands in a list or contingent of this id. */
    public static Muster of(Ruling ruling, Id id, Body body) {
        return new Muster(ruling, id, body);
    }

    private void lay(Body body, int parent, long copies, boolean support) {
        lay(body.entries(), parent, copies, support);
        lay(body.supports(), parent, copies, true);
    }

    private void lay(List<Entry> entries, int parent, long copies, boolean support) {
        for (Entry entry : entries) {
            int count = (int) Math.max(0, Math.min(MOST, entry.count()));
            Node node = new Node(entry, ruling.choice(entry.what()), nodes.size(), parent, support, count,
                    Math.min(MOST, copies * count));
            nodes.add(node);
            lay(entry.body(), node.index, node.copies, false);
            node.end = nodes.size();
        }
    }

    /** The rules it is laid out under. */
    public Ruling ruling() {
        return ruling;
    }

    /** The id of the list or contingent. */
    public Id id() {
        return id;
    }

    /** All entries, in the order of the list. */
    public List<Node> nodes() {
        return nodes;
    }

    /** All formations, in the order of the list. */
    public List<Node> formations() {
        return formations;
    }

    /** What it costs, with all parts. */
    public Tally tally() {
        return tally;
    }

    /** How many there are of the choice of this number. */
    public long count(int choice) {
        return counts[choice];
    }

    /** How many there are of all that the selector means. */
    public long count(Selector of) {
        if (of.hasSupports()) {
            return count(of, 0, nodes.size(), 1);
        }
        long sum = 0;
        for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
            sum += counts[i];
        }
        return sum;
    }

    /** How many there are in one copy of a formation, with all that stands in formations in it. */
    public long countIn(Selector of, Node formation) {
        long known = within.within(of, formation);
        return known >= 0 ? known : count(of, formation.index + 1, formation.end, formation.copies);
    }

    /** How many stand in one copy of a formation itself, and not in a formation in it. */
    public long countDirectlyIn(Selector of, Node formation) {
        long known = within.directly(of, formation);
        if (known >= 0) {
            return known;
        }
        long sum = 0;
        for (int i = formation.index + 1; i < formation.end; i = nodes.get(i).end) {
            sum += share(of, nodes.get(i)) / formation.copies;
        }
        return sum;
    }

    long count(Selector of, int from, int to, long divisor) {
        long sum = 0;
        for (int i = from; i < to; i++) {
            sum += share(of, nodes.get(i)) / divisor;
        }
        return sum;
    }

    /** How many copies of the node the selector means. */
    public static long share(Selector of, Node node) {
        if (node.choice == null) {
            return 0;
        }
        if (of.takes(node.choice.index())) {
            return node.copies;
        }
        long sum = 0;
        for (int s = 0; s < node.supports.length; s++) {
            sum += of.takesSupport(s) ? node.supports[s] : 0;
        }
        return sum;
    }

    /** The points of all that the selector means; a formation with all that stands in it. */
    public long points(Selector of) {
        if (of.hasSupports() || of.hasFormations()) {
            return points(of, 0, nodes.size(), 1);
        }
        long sum = 0;
        for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
            sum += points[i];
        }
        return sum;
    }

    /** The points in one copy of a formation, with all that stands in formations in it. */
    public long pointsIn(Selector of, Node formation) {
        return points(of, formation.index + 1, formation.end, formation.copies);
    }

    /** The points that stand in one copy of a formation itself, and not in a formation in it. */
    public long pointsDirectlyIn(Selector of, Node formation) {
        long sum = 0;
        for (int i = formation.index + 1; i < formation.end; i = nodes.get(i).end) {
            sum += points(of, i, i + 1, formation.copies);
        }
        return sum;
    }

    long points(Selector of, int from, int to, long divisor) {
        long sum = 0;
        int i = from;
        while (i < to) {
            Node node = nodes.get(i);
            long share = share(of, node);
            if (share == 0) {
                i++;
            } else if (node.formation() != null) {
                sum += whole(node) / divisor;
                i = node.end;
            } else {
                sum += node.points * share / node.copies / divisor;
                i++;
            }
        }
        return sum;
    }

    /** The next node that the selector means, from one on and before another; -1 if there is none. */
    int next(Selector of, int from, int to) {
        for (int i = from; i < to; i++) {
            boolean meant = choiceOf[i] >= 0 && of.takes(choiceOf[i]) ? nodes.get(i).copies > 0
                    : of.hasSupports() && share(of, nodes.get(i)) > 0;
            if (meant) {
                return i;
            }
        }
        return -1;
    }

    /** The strengths of all that the selector means, of a formation those of all that stands in it. */
    long strength(Selector of) {
        if (of.hasSupports() || of.hasFormations()) {
            return strength(of, 0, nodes.size(), 1);
        }
        if (strengths == null) {
            strengths = new long[counts.length];
            for (Node node : nodes) {
                if (node.choice != null) {
                    strengths[node.choice.index()] += node.strength * node.copies;
                }
            }
        }
        long sum = 0;
        for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
            sum += strengths[i];
        }
        return sum;
    }

    /** The same of some nodes, in one copy of what stands around them. */
    long strength(Selector of, int from, int to, long divisor) {
        long sum = 0;
        int i = from;
        while (i < to) {
            Node node = nodes.get(i);
            long share = share(of, node);
            if (share > 0 && node.formation() != null) {
                for (int inner = i + 1; inner < node.end; inner++) {
                    sum += nodes.get(inner).strength * nodes.get(inner).copies / divisor;
                }
                i = node.end;
            } else {
                sum += node.strength * share / divisor;
                i++;
            }
        }
        return sum;
    }

    /** The points of all copies of a node with all that stands in it. */
    public long whole(Node node) {
        long sum = 0;
        for (int i = node.index; i < node.end; i++) {
            sum += nodes.get(i).points;
        }
        return sum;
    }
}
