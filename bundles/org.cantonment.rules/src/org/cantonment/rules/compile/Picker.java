package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Fact;

/**
 * Picks among lines of one key the one that stands, and says where books contradict themselves or one another.
 */
final class Picker {

    private final BookOrder order;
    private final List<Finding> findings;

    Picker(BookOrder order, List<Finding> findings) {
        this.order = order;
        this.findings = findings;
    }

    /** The lines of the highest rank, all of them. */
    static <T extends Fact> List<T> top(List<Said<T>> lines) {
        List<T> top = new ArrayList<>();
        Said<T> best = null;
        for (Said<T> said : lines) {
            if (best == null || said.outranks(best)) {
                best = said;
                top.clear();
            }
            if (!best.outranks(said)) {
                top.add(said.fact());
            }
        }
        return top;
    }

    /** Lower books first; among books that do not stand over one another, those that loosen last. */
    <T extends Fact> List<Said<T>> inTurn(List<Said<T>> changes) {
        List<Said<T>> waiting = new ArrayList<>(changes);
        List<Said<T>> turn = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Said<T> next = null;
            for (Said<T> said : waiting) {
                boolean free = waiting.stream().noneMatch(other -> order.over(said.book(), other.book()));
                if (free && (next == null || next.direction() == Direction.LOOSEN
                        && said.direction() != Direction.LOOSEN)) {
                    next = said;
                }
            }
            Said<T> taken = next == null ? waiting.get(0) : next;
            turn.add(taken);
            waiting.remove(taken);
        }
        return turn;
    }

    /** For every key the one line that stands, keys in the order in which they were first said. */
    <T extends Fact> List<Said<T>> each(List<Said<T>> lines, Function<T, ?> key) {
        Map<Object, List<Said<T>>> byKey = new LinkedHashMap<>();
        for (Said<T> said : lines) {
            byKey.computeIfAbsent(key.apply(said.fact()), any -> new ArrayList<>()).add(said);
        }
        List<Said<T>> picked = new ArrayList<>();
        for (List<Said<T>> same : byKey.values()) {
            picked.add(pick(same));
        }
        return picked;
    }

    /** The one line that stands, if there is any. */
    <T extends Fact> Optional<Said<T>> one(List<Said<T>> lines) {
        return lines.isEmpty() ? Optional.empty() : Optional.of(pick(lines));
    }

    private <T extends Fact> Said<T> pick(List<Said<T>> same) {
        Said<T> stands = same.get(0);
        for (Said<T> said : same.subList(1, same.size())) {
            if (said.book() == stands.book() && said.closeness() == stands.closeness()) {
                twice(stands, said);
            } else if (said.outranks(stands)) {
                stands = said.book() == stands.book() ? said : upper(stands, said);
            }
        }
        return stands;
    }

    private <T extends Fact> Said<T> upper(Said<T> lower, Said<T> said) {
        Strictness strictness = Strictness.of(lower.fact(), said.fact());
        if (wrongWay(said.direction(), strictness)) {
            findings.add(direction(said, lower.fact().id(), lower.book()));
            return said.direction() == Direction.TIGHTEN ? lower : said;
        }
        if (!order.over(said.book(), lower.book()) && order.layer(lower.book())
                && said.direction() != Direction.LOOSEN && strictness != Strictness.SAME) {
            collide(said, lower);
            return strictness == Strictness.LOOSER ? lower : said;
        }
        return said;
    }

    static boolean wrongWay(Direction direction, Strictness strictness) {
        return direction == Direction.TIGHTEN && strictness == Strictness.LOOSER
                || direction == Direction.LOOSEN && strictness == Strictness.STRICTER;
    }

    private void twice(Said<?> first, Said<?> second) {
        findings.add(new Finding("rule.twice", Severity.CAUTION, second.fact().id(), Optional.of(first.fact().id()),
                order.title(second.book()) + " says the same thing twice for this time; the first line stands.",
                List.of(Mend.advice("Strike one of the two lines, or say when each holds."))));
    }

    Finding direction(Said<?> said, Id lower, int lowerBook) {
        boolean tighten = said.direction() == Direction.TIGHTEN;
        return new Finding("layer.direction", Severity.BREACH, said.fact().id(), Optional.of(lower),
                order.title(said.book()) + " says that it " + (tighten ? "tightens" : "loosens")
                        + " this, but its line is " + (tighten ? "looser" : "stricter") + " than what "
                        + order.title(lowerBook) + " says; the stricter of the two stands.",
                List.of(Mend.advice("Write '" + (tighten ? "loosen" : "tighten") + "', or mend the number.")));
    }

    private void collide(Said<?> said, Said<?> lower) {
        findings.add(collision(said.fact().id(), said.book(), lower.fact().id(), lower.book()));
    }

    Finding collision(Id said, int book, Id lower, int lowerBook) {
        return new Finding("layer.collide", Severity.BREACH, said, Optional.of(lower),
                order.title(book) + " and " + order.title(lowerBook)
                        + " both change this, and neither stands over the other; the stricter of the two stands.",
                List.of(Mend.advice("Let one of the two books stand over the other, or say that it loosens.")));
    }

    Finding unsaid(Id said, int book, Id lower, int lowerBook) {
        return new Finding("layer.relaxes-unsaid", Severity.BREACH, said, Optional.of(lower),
                order.title(book) + " allows more here than " + order.title(lowerBook)
                        + " does without saying that it relaxes; the stricter of the two stands.",
                List.of(Mend.advice("Write 'loosen' if that is meant.")));
    }
}
