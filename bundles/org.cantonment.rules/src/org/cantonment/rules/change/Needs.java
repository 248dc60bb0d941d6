package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Measure;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;

/** Makes needs out of what is found wrong with a changed list. */
final class Needs {

    private final Board board;
    private final State state;
    private final Draft draft;
    private final List<Edit> open;

    Needs(Board board, State state, Draft draft) {
        this.board = board;
        this.state = state;
        this.draft = draft;
        this.open = state.open();
    }

    Board board() {
        return board;
    }

    State state() {
        return state;
    }

    Draft draft() {
        return draft;
    }

    /** All that may still be done. */
    List<Edit> open() {
        return open;
    }

    /**
     * Whether a need can be told only as a whole: a dispensation may cover some of what breaks a rule, and what stands in
     * contingents may count together.
     */
    boolean blurred() {
        return !board.situation().excuses().isEmpty() || board.parts().size() > 1;
    }

    /** A part of the changed list, laid out. */
    Muster muster(Part part) {
        return draft.muster(part);
    }

    /** What is kept and must stay so: bounds, and the limit of points. */
    List<Need> kept(Verdict verdict) {
        List<Need> kept = new ArrayList<>();
        if (blurred()) {
            return kept;
        }
        Part part = board.parts().get(0);
        for (LimitView limit : part.now().limits()) {
            for (LimitLine line : limit.lines()) {
                if (limit.severity() == Severity.BREACH && limit.conditions().isEmpty() && line instanceof BoundView bound
                        && (!board.fluid() || bound.bound().measure() == Measure.COUNT)) {
                    new BoundNeeds(this, part, new LimitNeeds(this, part)).kept(bound, kept);
                }
            }
        }
        new SupportNeeds(this).kept(part, kept);
        for (Node node : muster(part).nodes()) {
            Group group = board.group(node.entry().id());
            Place place = group != null ? group.inside() : draft.opened(node.entry().id());
            if (node.formation() != null && node.copies() > 0 && place != null) {
                new RoomNeeds(this, place, node).into(kept);
            }
        }
        if (board.fluid() && board.situation().points().isPresent() && floor() <= board.situation().points().getAsInt()) {
            kept.add(Need.of(floor() - board.situation().points().getAsInt(), open, Needs::savedSurely));
        }
        long over = verdict.points() - board.situation().points().orElse(Integer.MAX_VALUE);
        if (!board.fluid() && board.situation().points().isPresent() && verdict.bases().stream()
                .noneMatch(basis -> basis.finding().code().equals("points.over"))) {
            kept.add(Need.of(over, open, Needs::saved));
        }
        return kept;
    }

    /** What every breach asks for. */
    List<Need> of(Verdict verdict) {
        List<Need> needs = new ArrayList<>();
        for (Finding finding : verdict.findings(Severity.BREACH)) {
            needs.add(of(finding, verdict));
        }
        return needs;
    }

    private Need of(Finding finding, Verdict verdict) {
        String code = finding.code();
        Group group = board.group(finding.at());
        if (code.startsWith("billet.")) {
            return new BilletNeeds(this).of(finding);
        }
        if (code.startsWith("support.") || code.equals("unit.loose")) {
            return new SupportNeeds(this).of(part(finding));
        }
        if (code.startsWith("points.") && board.fluid()) {
            long over = board.parts().size() > 1 ? 0 : floor() - board.situation().points().orElse(Integer.MAX_VALUE);
            return over <= 0 ? anything() : Need.of(over, open, Needs::savedSurely);
        }
        if (code.equals("points.over") && board.situation().points().isPresent()) {
            return Need.of(Math.max(1, verdict.points() - board.situation().points().getAsInt()), open, Needs::saved);
        }
        if (code.equals("points.contingent-over")) {
            return Need.of(1, open, edit -> part(edit) == part(finding) ? saved(edit) : 0);
        }
        if (group != null && (code.startsWith("era.") || code.startsWith("unit.") || code.equals("count.too-large"))) {
            return going(group);
        }
        if (group != null && (code.startsWith("strength.") || code.startsWith("option."))) {
            return changing(group);
        }
        return new LimitNeeds(this, part(finding)).of(finding);
    }

    /** What may stand in the way of anything: something must be done, whatever it is. */
    Need anything() {
        return Need.of(1, open, edit -> 1);
    }

    /**
     * What the list costs at the least if each entry comes to the least that a formula may make of its price. No list is
     * within a limit for which this is too much.
     */
    private long floor() {
        long points = 0;
        for (Node node : draft.muster(board.parts().get(0)).nodes()) {
            if (node.choice() != null) {
                points += Charges.least(node.choice(), Prices.now(node), node.strength()) * node.copies();
            }
        }
        return points;
    }

    /** By how much an edit lowers what the list costs at the least. */
    private static long savedSurely(Edit edit) {
        long saved = 0;
        for (Delta delta : edit.deltas()) {
            saved -= delta.count() < 0 ? delta.most() : delta.least();
        }
        return saved;
    }

    /** The points that an edit saves at most. */
    static long saved(Edit edit) {
        long saved = 0;
        for (Delta delta : edit.deltas()) {
            saved -= delta.least();
        }
        return saved;
    }

    private static Part part(Edit edit) {
        return edit.group() != null ? edit.group().part() : edit.place().part();
    }

    /** The part of the list that a finding points at. */
    Part part(Finding finding) {
        Id at = finding.at();
        Group group = board.group(at);
        if (group != null) {
            return group.part();
        }
        Place place = draft.standing(at);
        for (Part part : board.parts()) {
            if (place != null ? place.part() == part : part.id().equals(at)) {
                return part;
            }
        }
        return board.parts().get(0);
    }

    /** All of the group must go. */
    private Need going(Group group) {
        long left = state.left(group);
        return Need.of(left, open, edit -> goes(edit, group, left, edit.kind() == Kind.REMOVE
                || edit.kind() == Kind.SUCCEED));
    }

    /** All of the group must go or be taken otherwise. */
    private Need changing(Group group) {
        long left = state.left(group);
        return Need.of(left, open, edit -> goes(edit, group, left, edit.kind() != Kind.UNPIN));
    }

    private static long goes(Edit edit, Group group, long left, boolean helps) {
        return edit.group() == group ? helps ? 1 : 0 : takesOut(edit, group) ? left : 0;
    }

    /** Whether an edit takes out a formation that the group stands in. */
    static boolean takesOut(Edit edit, Group group) {
        return edit.group() != null && edit.kind() == Kind.REMOVE && group.within(edit.group());
    }

    /** One of these entries cannot stay as it is. */
    Need lacking(Set<Id> entries) {
        List<Group> groups = new ArrayList<>();
        for (Id id : entries) {
            if (board.group(id) != null) {
                groups.add(board.group(id));
            }
        }
        return Need.of(1, open, edit -> {
            boolean helps = false;
            for (Group group : groups) {
                helps |= goes(edit, group, 1, edit.kind() != Kind.UNPIN) > 0;
            }
            return helps ? 1 : 0;
        });
    }
}
