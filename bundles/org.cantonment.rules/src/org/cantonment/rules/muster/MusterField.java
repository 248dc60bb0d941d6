package org.cantonment.rules.muster;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.expression.Field;
import org.cantonment.rules.expression.Gap;
import org.cantonment.rules.expression.Value;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Selector;

/** What can be asked of a muster alone: the entries, the round and the era. */
public class MusterField implements Field {

    private final Muster muster;
    private final CancelToken cancel;

    /** A field over a muster. */
    public MusterField(Muster muster, CancelToken cancel) {
        this.muster = muster;
        this.cancel = cancel;
    }

    /** The entries that are asked. */
    protected final Muster muster() {
        return muster;
    }

    @Override
    public Value quantity(Quantity said, Selector of, int element) {
        return switch (said.measure()) {
            case COUNT -> Value.of(count(of, element));
            case DIFFERENT -> Value.of(different(of, element, new BitSet()).cardinality());
            case POINTS -> Value.of(points(of, element));
            case STRENGTH -> Value.of(strength(of, element));
            case KEPT, GONE, ADDED -> Gap.NO_LIST_BEFORE;
        };
    }

    private long count(Selector of, int element) {
        if (element == ALL) {
            return muster.count(of);
        }
        Node node = muster.nodes().get(element);
        if (node.formation() != null) {
            return muster.countIn(of, node);
        }
        return muster.count(of, start(node), node.end, Math.max(1, node.copies));
    }

    /** A formation is what stands in it, a unit is itself. */
    private static int start(Node node) {
        return node.formation() == null ? node.index : node.index + 1;
    }

    /** The different choices that are meant, added to some others. */
    protected final BitSet different(Selector of, int element, BitSet into) {
        int from = element == ALL ? 0 : start(muster.nodes().get(element));
        int to = element == ALL ? muster.nodes().size() : muster.nodes().get(element).end;
        for (int i = from; i < to; i++) {
            Node node = muster.nodes().get(i);
            if (Muster.share(of, node) > 0) {
                into.set(node.choice.index());
            }
        }
        return into;
    }

    /** The choices of other rules that are meant here, added to some others. */
    public final void choices(Selector of, Ruling rules, BitSet into) {
        for (Node node : muster.nodes()) {
            Choice there = node.choice == null ? null : rules.choice(node.choice.id());
            if (there != null && node.copies > 0 && of.takes(there.index())) {
                into.set(there.index());
            }
        }
    }

    /** Who is meant by a selection of other rules, by the numbers that they have here. */
    public final Selector translated(Selector of, Ruling rules) {
        if (rules == muster.ruling()) {
            return of;
        }
        BitSet meant = new BitSet();
        for (Choice choice : muster.ruling().choices()) {
            Choice there = rules.choice(choice.id());
            if (there != null && of.takes(there.index())) {
                meant.set(choice.index());
            }
        }
        return new Selector(of.ids(), meant, new BitSet(), of.hasFormations(), of.words());
    }

    private long points(Selector of, int element) {
        if (element == ALL) {
            return muster.points(of);
        }
        Node node = muster.nodes().get(element);
        return muster.points(of, start(node), node.end, Math.max(1, node.copies));
    }

    private long strength(Selector of, int element) {
        if (element == ALL) {
            return muster.strength(of);
        }
        Node node = muster.nodes().get(element);
        return muster.strength(of, start(node), node.end, Math.max(1, node.copies));
    }

    @Override
    public long options(Optional<String> option, Selector of, int element) {
        int from = element == ALL ? 0 : start(muster.nodes().get(element));
        int to = element == ALL ? muster.nodes().size() : muster.nodes().get(element).end;
        long divisor = element == ALL ? 1 : Math.max(1, muster.nodes().get(element).copies);
        long sum = 0;
        for (int i = from; i < to; i++) {
            Node node = muster.nodes().get(i);
            if (node.unit() != null && !node.entry.options().isEmpty()) {
                sum += Muster.share(of, node) / divisor * taken(node, option);
            }
        }
        return sum;
    }

    private static long taken(Node node, Optional<String> option) {
        long sum = 0;
        for (Taken taken : node.entry.options()) {
            boolean meant = option.isEmpty() || option.get().equals(taken.option());
            sum += meant ? Math.max(0, Math.min(Muster.MOST, taken.count())) : 0;
        }
        return sum;
    }

    @Override
    public Value pieces(PiecesOf said, int element) {
        return Gap.NO_SHELF;
    }

    @Override
    public Value given(Given.What what) {
        return switch (what) {
            case ROUND -> muster.ruling().occasion().round().isPresent()
                    ? Value.of(muster.ruling().occasion().round().getAsInt()) : Gap.NO_ROUND;
            case LIMIT -> Gap.NO_LIMIT;
            case POINTS_USED -> Value.of(muster.tally().points());
        };
    }

    @Override
    public Value eraIs(List<Id> eras) {
        return muster.ruling().occasion().era().map(era -> Value.of(eras.contains(era))).orElse(Gap.NO_ERA);
    }

    @Override
    public long own(Own.What what, int element) {
        Node node = muster.nodes().get(element);
        long copies = Math.max(1, node.copies);
        return switch (what) {
            case STRENGTH -> node.formation() == null ? node.strength
                    : muster.strength(Selector.everything(muster.ruling().choices().size()), node.index + 1, node.end, copies);
            case POINTS -> muster.whole(node) / copies;
            case OPTIONS -> taken(node, Optional.empty());
        };
    }

    @Override
    public int next(Selector over, int element, int from) {
        int start = element == ALL ? from : Math.max(from, start(muster.nodes().get(element)));
        int end = element == ALL ? muster.nodes().size() : muster.nodes().get(element).end;
        return muster.next(over, start, end);
    }

    @Override
    public long copies(int element, int within) {
        long copies = muster.nodes().get(element).copies;
        return within == ALL ? copies : copies / Math.max(1, muster.nodes().get(within).copies);
    }

    @Override
    public int size(int element) {
        return element == ALL ? muster.nodes().size() : muster.nodes().get(element).end - element;
    }

    @Override
    public CancelToken cancel() {
        return cancel;
    }
}
