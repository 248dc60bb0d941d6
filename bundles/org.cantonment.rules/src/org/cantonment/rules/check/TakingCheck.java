package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.rules.Relation;
import org.cantonment.domain.rules.Taking;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.TakingView;

/** What taking one thing asks of others: they must be there, must not be there, be joined, or be as strong. */
public final class TakingCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (LimitView limit : about.limits()) {
            for (LimitLine line : limit.lines()) {
                if (line instanceof TakingView taking) {
                    about.situation().cancel().check();
                    Ground.each(about, taking.taking().scope(), ground -> {
                        if (!settled(taking, ground)) {
                            new TakingTest(about, limit, taking, ground, sink).run();
                        }
                    });
                }
            }
        }
    }

    /** Whether counts alone tell that nothing is wrong, as they nearly always do. */
    private static boolean settled(TakingView view, Ground ground) {
        if (view.subjects().hasSupports() || view.objects().hasSupports()) {
            return false;
        }
        if (ground.countHere(view.subjects()) == 0) {
            return true;
        }
        Relation relation = view.taking().relation();
        if (relation != Relation.NEEDS && relation != Relation.EXCLUDES) {
            return false;
        }
        long there = ground.countHere(view.beside());
        boolean holds = view.taking().span().orElse(Span.atLeast(1)).holds(there);
        return relation == Relation.NEEDS ? holds : there == 0 || !holds;
    }

    /** One line held against one ground. */
    private static final class TakingTest {

        private final Case about;
        private final LimitView limit;
        private final TakingView view;
        private final Taking taking;
        private final Sink sink;
        private final Ground ground;
        private final List<Node> subjects = new ArrayList<>();
        private final List<Node> objects = new ArrayList<>();

        TakingTest(Case about, LimitView limit, TakingView view, Ground ground, Sink sink) {
            this.about = about;
            this.limit = limit;
            this.view = view;
            this.taking = view.taking();
            this.sink = sink;
            this.ground = ground;
            for (Node node : ground.nodes()) {
                if (ground.share(view.subjects(), node) > 0) {
                    subjects.add(node);
                } else if (ground.share(view.objects(), node) > 0) {
                    objects.add(node);
                }
            }
        }

        void run() {
            if (subjects.isEmpty()) {
                return;
            }
            if (taking.relation() == Relation.NEEDS) {
                needs();
            } else if (taking.relation() == Relation.EXCLUDES) {
                excludes();
            } else if (taking.relation() == Relation.JOINS) {
                joins();
            } else {
                matches();
            }
        }

        private long objectCount() {
            long sum = 0;
            for (Node node : objects) {
                sum += ground.share(view.objects(), node);
            }
            return sum;
        }

        private void needs() {
            Span span = taking.span().orElse(Span.atLeast(1));
            long count = objectCount();
            if (span.holds(count)) {
                return;
            }
            Node first = subjects.get(0);
            List<Mend> mends = BoundCheck.own(limit);
            if (count < span.min()) {
                mends.addAll(Mends.addSomewhere(about, view.objects(), (int) (span.min() - count)));
            }
            mends.add(Mends.take(first, first.count()));
            say("taking.needs", first, first.choice().title() + ": " + span + " of " + view.objects().words()
                    + " must be there; " + ground.has() + ' ' + (count == 0 ? "none" : count) + '.', mends);
        }

        private void excludes() {
            Span span = taking.span().orElse(Span.atLeast(1));
            if (objects.isEmpty() || !span.holds(objectCount())) {
                return;
            }
            Node first = subjects.get(0);
            Node other = objects.get(0);
            List<Mend> mends = BoundCheck.own(limit);
            if (objects.size() == 1) {
                mends.add(Mends.take(other, other.count()));
            }
            if (subjects.size() == 1) {
                mends.add(Mends.take(first, first.count()));
            }
            say("taking.excludes", other, first.choice().title() + " may not be taken beside "
                    + taking.span().map(some -> some + " of ").orElse("") + view.objects().words() + "; " + ground.has()
                    + ' ' + first.choice().title() + " and " + other.choice().title() + '.', mends);
        }

        private void joins() {
            Set<Integer> joined = new HashSet<>();
            for (Node subject : subjects) {
                Node object = joined(subject);
                if (object == null) {
                    say("taking.joins", subject, subject.choice().title() + " must join a unit of "
                            + view.objects().words() + "; so far nothing is joined.", BoundCheck.own(limit));
                } else {
                    joined.add(object.index());
                }
            }
            if (taking.span().isPresent() && !joined.isEmpty() && !taking.span().get().holds(joined.size())) {
                say("taking.joins", subjects.get(0), view.subjects().words() + " must join " + taking.span().get()
                        + " of " + view.objects().words() + "; so far it is " + joined.size() + '.', BoundCheck.own(limit));
            }
        }

        private Node joined(Node subject) {
            String name = subject.entry().joins().orElse(null);
            for (Node object : objects) {
                if (name != null && name.equals(object.entry().alias().orElse(null))) {
                    return object;
                }
            }
            return null;
        }

        private void matches() {
            Map<Integer, Long> free = new HashMap<>();
            for (Node object : objects) {
                free.merge(object.strength(), ground.copies(object), Long::sum);
            }
            for (Node subject : subjects) {
                if (subject.unit() != null && !matched(subject, free)) {
                    mismatch(subject);
                }
            }
        }

        private boolean matched(Node subject, Map<Integer, Long> free) {
            Node object = joined(subject);
            if (taking.span().isPresent()) {
                Span span = taking.span().get();
                return object != null ? span.holds(object.strength())
                        : objects.stream().anyMatch(other -> span.holds(other.strength()));
            }
            if (object != null && object.strength() != subject.strength()) {
                return false;
            }
            long left = free.getOrDefault(subject.strength(), 0L) - ground.copies(subject);
            free.put(subject.strength(), Math.max(0, left));
            return left >= 0;
        }

        private void mismatch(Node subject) {
            List<Mend> mends = BoundCheck.own(limit);
            Node object = joined(subject);
            if (object != null && taking.span().isEmpty() && subject.unit().step(object.strength()) != null) {
                mends.add(Mends.strength(subject, object.strength()));
            }
            String wanted = taking.span().map(span -> "a unit of " + view.objects().words() + " of strength " + span)
                    .orElse("a unit of " + view.objects().words() + " just as strong, " + subject.strength());
            say("taking.matches", subject, subject.choice().title() + ": " + wanted + " must be there, and there is none.", mends);
        }

        private void say(String code, Node at, String sentence, List<Mend> mends) {
            Optional<Id> rule = Optional.of(view.id());
            sink.add(limit.id(), at.choice().id(), new Finding(code, limit.severity(), at.entry().id(), rule,
                    BoundCheck.lead(limit, view.book()) + sentence, mends));
        }
    }
}
