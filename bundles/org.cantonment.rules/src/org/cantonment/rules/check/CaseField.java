package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.PiecesOf.State;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Quantity.Measure;
import org.cantonment.domain.expression.Quantity.Stretch;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.expression.Amount;
import org.cantonment.rules.expression.Gap;
import org.cantonment.rules.expression.Value;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.MusterField;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.muster.Wants;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Holdings;
import org.cantonment.rules.view.Selector;

/** What can be asked where a list is judged: beside the entries the other contingents, the list before and the shelf. */
final class CaseField extends MusterField {

    private final Case about;
    private Heritage heritage;
    private List<MusterField> before;

    CaseField(Case about) {
        super(about.muster(), about.situation().cancel());
        this.about = about;
    }

    @Override
    public Value quantity(Quantity said, Selector of, int element) {
        if (said.measure() == Measure.KEPT || said.measure() == Measure.GONE || said.measure() == Measure.ADDED) {
            return held(said.measure(), of);
        }
        return switch (said.in()) {
            case HERE -> super.quantity(said, of, element);
            case CONTINGENT -> super.quantity(said, of, ALL);
            case LIST -> together(said, of, others(), super.quantity(said, of, ALL));
            case CAMPAIGN -> plus(together(said, of, others(), super.quantity(said, of, ALL)), used(of));
            case LIST_BEFORE -> about.situation().before().isEmpty() ? Gap.NO_LIST_BEFORE
                    : together(said, of, before(about.situation().before().get()), null);
        };
    }

    private List<MusterField> others() {
        return about.others().stream().map(other -> new MusterField(other, cancel())).toList();
    }

    /** The list before as the rules of today see it. */
    private List<MusterField> before(ForceList list) {
        if (before == null) {
            List<MusterField> parts = new ArrayList<>();
            parts.add(new MusterField(Muster.of(about.ruling(), list.id(), list.body()), cancel()));
            list.contingents().forEach(contingent -> parts.add(new MusterField(Muster.of(about.situation().contingents()
                    .getOrDefault(contingent.id(), about.ruling()), contingent.id(), contingent.body()), cancel())));
            before = parts;
        }
        return before;
    }

    /** The parts of a list taken together; a part under other rules knows what those call by the same names. */
    private Value together(Quantity said, Selector of, List<MusterField> parts, Value first) {
        if (said.measure() == Measure.DIFFERENT) {
            BitSet all = first == null ? new BitSet() : different(of, ALL, new BitSet());
            parts.forEach(part -> part.choices(of, about.ruling(), all));
            return Value.of(all.cardinality());
        }
        Quantity plain = new Quantity(said.measure(), said.of(), Stretch.HERE);
        Value sum = first == null ? Value.of(0) : first;
        for (MusterField part : parts) {
            if (part.quantity(plain, part.translated(of, about.ruling()), ALL) instanceof Amount more) {
                sum = plus(sum, more.ratio());
            }
        }
        return sum;
    }

    private static Value plus(Value sum, Ratio more) {
        return sum instanceof Amount amount ? Value.of(amount.ratio().plus(more)) : sum;
    }

    private Ratio used(Selector of) {
        long sum = 0;
        for (Map.Entry<Id, Integer> used : about.situation().used().entrySet()) {
            Choice choice = about.ruling().choice(used.getKey());
            sum += choice != null && of.takes(choice.index()) ? used.getValue() : 0;
        }
        return Ratio.of(sum);
    }

    private Value held(Measure measure, Selector of) {
        if (about.situation().before().isEmpty()) {
            return Gap.NO_LIST_BEFORE;
        }
        if (heritage == null) {
            heritage = Heritage.of(about, about.situation().before().get());
        }
        return switch (measure) {
            case GONE -> Value.of(sum(heritage.gone(), of));
            case ADDED -> Value.of(sum(heritage.added(), of));
            default -> Value.of(sum(heritage.was(), of) - sum(heritage.gone(), of));
        };
    }

    private long sum(Map<Id, Long> counts, Selector of) {
        long sum = 0;
        for (Map.Entry<Id, Long> count : counts.entrySet()) {
            Choice choice = about.ruling().choice(count.getKey());
            sum += choice != null && of.takes(choice.index()) ? count.getValue() : 0;
        }
        return sum;
    }

    @Override
    public Value given(Given.What what) {
        return switch (what) {
            case ROUND -> super.given(what);
            case LIMIT -> about.points().isPresent() ? Value.of(about.points().getAsInt()) : Gap.NO_LIMIT;
            case POINTS_USED -> Value.of(about.contingent() ? about.usedHere() : about.used());
        };
    }

    @Override
    public Value pieces(PiecesOf said, int element) {
        if (said.state() == State.NEEDED) {
            return Value.of(needed(said.what(), element));
        }
        if (about.situation().holdings().isEmpty()) {
            return Gap.NO_SHELF;
        }
        Holdings holdings = about.situation().holdings().get();
        if (holdings.uncounted().stream().anyMatch(piece -> meant(piece, said.what()))) {
            return Gap.NO_SHELF;
        }
        long sum = 0;
        for (Map.Entry<Id, Long> there : (said.state() == State.PAINTED ? holdings.painted() : holdings.owned())
                .entrySet()) {
            sum += meant(there.getKey(), said.what()) ? there.getValue() : 0;
        }
        return Value.of(sum);
    }

    /** Needs that are filled with nothing but what is meant. */
    private long needed(List<Id> what, int element) {
        List<Node> nodes = muster().nodes();
        int from = element == ALL ? 0 : element;
        int to = element == ALL ? nodes.size() : nodes.get(element).end();
        long sum = 0;
        for (int i = from; i < to; i++) {
            Node node = nodes.get(i);
            if (node.unit() != null && node.copies() > 0) {
                long copies = element == ALL ? node.copies() : copies(i, element);
                for (Map.Entry<List<Id>, Long> want : Wants.of(node).entrySet()) {
                    boolean meant = want.getKey().stream().allMatch(piece -> meant(piece, what));
                    sum += meant ? Math.min(Muster.MOST, want.getValue()) * copies : 0;
                }
            }
        }
        return sum;
    }

    /** Whether a piece type, or a family that it lies in, is among these. */
    private boolean meant(Id piece, List<Id> what) {
        Map<Id, Id> kin = about.situation().kin();
        int steps = 0;
        for (Id at = piece; at != null && steps <= kin.size(); at = kin.get(at)) {
            if (what.contains(at)) {
                return true;
            }
            steps++;
        }
        return false;
    }
}
