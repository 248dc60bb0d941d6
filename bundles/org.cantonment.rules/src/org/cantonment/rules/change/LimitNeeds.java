package org.cantonment.rules.change;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Relation;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.view.BeforeView;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.KeepView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.TakingView;
import org.cantonment.rules.view.UnitView;

/** What findings about the lines of limits ask for. A line that is not known here may ask for anything. */
final class LimitNeeds {

    private final Needs needs;
    private final Part part;

    LimitNeeds(Needs needs, Part part) {
        this.needs = needs;
        this.part = part;
    }

    Need of(Finding finding) {
        LimitLine line = line(finding.rule());
        if (line instanceof BoundView bound && needs.board().fluid() && bound.bound().measure() != Measure.COUNT) {
            return needs.anything();
        }
        if (line instanceof BoundView bound && !hasSupports(bound.of()) && !hasSupports(bound.per())) {
            return new BoundNeeds(needs, part, this).of(bound, finding.code().equals("limit.at-most"));
        }
        if (line instanceof TakingView taking && !hasSupports(taking.subjects()) && !hasSupports(taking.objects())) {
            return taking(taking, finding.code());
        }
        if (line instanceof KeepView) {
            return keep();
        }
        if (line instanceof BeforeView before && !hasSupports(before.first()) && !hasSupports(before.then())) {
            return one(edit -> more(edit, before.first()) || fewer(edit, before.then()) ? 1 : 0);
        }
        return needs.anything();
    }

    /** Who stands in a support depends on all that want a place there. */
    private static boolean hasSupports(Selector some) {
        return some.hasSupports();
    }

    private Need one(ToLongFunction<Edit> effect) {
        return Need.of(1, needs.open(), effect);
    }

    /** Null for lines that hold only under a condition: whatever changes that may mend them. */
    private LimitLine line(Optional<Id> rule) {
        for (LimitView limit : part.now().limits()) {
            for (LimitLine line : limit.conditions().isEmpty() ? limit.lines() : List.<LimitLine>of()) {
                if (rule.isPresent() && line.id().equals(rule.get())) {
                    return line;
                }
            }
        }
        return null;
    }

    /** Whether what the delta is about is meant. */
    boolean meant(Delta delta, Selector of) {
        Choice choice = part.own(delta.choice());
        return choice != null && of.takes(choice.index());
    }

    /** By how many an edit changes the count of those meant. */
    long count(Edit edit, Selector of) {
        long count = 0;
        for (Delta delta : edit.deltas()) {
            count += meant(delta, of) ? delta.count() : 0;
        }
        return count;
    }

    /** Whether an edit brings one of those meant, or a formation in which one may come to stand. */
    boolean more(Edit edit, Selector of) {
        for (Delta delta : edit.deltas()) {
            if (delta.count() > 0 && meant(delta, of)) {
                return true;
            }
        }
        return hosts(edit, of);
    }

    /** Whether an edit puts in a formation in which one of those meant may come to stand. */
    boolean hosts(Edit edit, Selector of) {
        if (edit.kind() != Kind.ADD_FORMATION) {
            return false;
        }
        if (edit.place().part() != part) {
            return true;
        }
        return needs.board().maker(part).filling().reaches(edit.formation(), all(of));
    }

    private static BitSet all(Selector of) {
        BitSet some = new BitSet();
        for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
            some.set(i);
        }
        return some;
    }

    /** How many of those meant, or of those not meant, may come to stand in what an edit puts in. */
    long hosted(Edit edit, Selector of, boolean meant) {
        if (edit.kind() != Kind.ADD_FORMATION) {
            return 0;
        }
        if (edit.place().part() != part) {
            return Need.PLENTY;
        }
        BitSet some = some(of, meant);
        return needs.board().maker(part).filling().capacity(edit.formation(), some) * edit.place().weight();
    }

    /** The points of all those at the most. */
    long hostedPoints(Edit edit, Selector of, boolean meant) {
        long count = hosted(edit, of, meant);
        return count == 0 || count >= Need.PLENTY ? Math.min(count, Need.PLENTY) : count * needs.board().maker(part).dearest(some(of, meant));
    }

    private BitSet some(Selector of, boolean meant) {
        BitSet some = all(of);
        if (!meant) {
            some.flip(0, part.now().choices().size());
        }
        return some;
    }

    /** Whether an edit takes one of those meant away. */
    boolean fewer(Edit edit, Selector of) {
        for (Delta delta : edit.deltas()) {
            if (delta.count() < 0 && meant(delta, of)) {
                return true;
            }
        }
        return false;
    }

    private boolean touches(Edit edit, Selector of) {
        for (Delta delta : edit.deltas()) {
            if (meant(delta, of)) {
                return true;
            }
        }
        return false;
    }

    private Need taking(TakingView view, String code) {
        Selector subjects = view.subjects();
        Selector objects = view.objects();
        Relation relation = view.taking().relation();
        Optional<Span> span = view.taking().span();
        return one(edit -> {
            boolean helps = fewer(edit, subjects);
            helps |= relation == Relation.MATCHES && (touches(edit, subjects) || touches(edit, objects));
            helps |= relation != Relation.EXCLUDES && more(edit, objects);
            helps |= relation == Relation.EXCLUDES && span.isPresent() && more(edit, objects);
            helps |= (relation == Relation.EXCLUDES || span.isPresent()) && fewer(edit, objects);
            return helps ? 1 : 0;
        });
    }

    /** Units that the list before had, or that took the place of such. */
    private Need keep() {
        BitSet kept = new BitSet();
        needs.board().situation().before().ifPresent(before -> {
            gather(before.body(), kept);
            before.contingents().forEach(contingent -> gather(contingent.body(), kept));
        });
        return one(edit -> {
            for (Delta delta : edit.deltas()) {
                Choice choice = part.own(delta.choice());
                if (delta.count() > 0 && choice != null && kept.get(choice.index())) {
                    return 1;
                }
            }
            return edit.kind() == Kind.ADD_FORMATION ? 1 : 0;
        });
    }

    private void gather(Body body, BitSet kept) {
        for (Entry entry : body.entries()) {
            gather(entry, kept);
        }
        for (Entry entry : body.supports()) {
            gather(entry, kept);
        }
    }

    private void gather(Entry entry, BitSet kept) {
        if (part.now().choice(entry.what()) instanceof UnitView unit) {
            kept.set(unit.index());
            unit.successor().map(line -> part.now().choice(line.unit())).ifPresent(next -> kept.set(next.index()));
        }
        gather(entry.body(), kept);
    }
}
