package org.cantonment.desk.tests;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.State;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;

/** Checks as somebody else might write them; each counts how often it is asked. */
abstract class TestCheck implements RuleCheck {
    final AtomicInteger asked = new AtomicInteger();

    private final String name;
    private final List<Parameter> parameters;
    final FindingKind kind;

    TestCheck(String name, FindingKind kind, Parameter... parameters) {
        this.name = name;
        this.kind = kind;
        this.parameters = List.of(parameters);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String label() {
        return name.replace('-', ' ').toLowerCase(Locale.ROOT);
    }

    @Override
    public String about() {
        return "Looks after the " + label() + ".";
    }

    @Override
    public List<Parameter> parameters() {
        return parameters;
    }

    @Override
    public List<FindingKind> findings() {
        return List.of(kind);
    }

    @Override
    public List<Finding> check(Question question) {
        asked.incrementAndGet();
        return answer(question);
    }

    abstract List<Finding> answer(Question question);

    /** So much of the shelf's built pieces must be painted. */
    static final class PaintedShare extends TestCheck {
        PaintedShare() {
            super("Painted-Share", new FindingKind("too-little", Severity.BREACH, "Too little of the shelf is painted."),
                    Parameter.percent("Share", "Painted share", "How much must be painted, by pieces.").presetTo(50));
        }

        @Override
        List<Finding> answer(Question question) {
            if (question.shelf().isEmpty()) {
                return List.of();
            }
            long all = 0;
            long painted = 0;
            for (Holding holding : question.shelf().get().holdings()) {
                if (!holding.states().isEmpty()) {
                    all += holding.count();
                    painted += holding.states().stream().filter(share -> share.state() == State.PAINTED)
                            .mapToInt(share -> share.count().orElse(holding.count())).sum();
                }
            }
            return BigDecimal.valueOf(painted * 100).compareTo(question.number("Share").multiply(BigDecimal.valueOf(all))) >= 0
                    ? List.of() : List.of(kind.at(question.list().id(), painted + " of " + all + " pieces are painted."));
        }
    }

    /** No unit of the list before may be taken again. */
    static final class NoRepeat extends TestCheck {
        NoRepeat() {
            super("No-Repeat", new FindingKind("again", Severity.BREACH, "A unit of the round before stands here again."),
                    Parameter.name("But", "Except", "A unit that may be taken again.").presetTo("Staff"));
        }

        @Override
        List<Finding> answer(Question question) {
            Map<Id, Long> before = question.before().map(Question::counts).orElse(Map.of());
            List<Finding> findings = new ArrayList<>();
            question.entries().keySet().stream().filter(entry -> before.containsKey(entry.what())
                    && !entry.what().name().equals(question.name("But")) && entry.body().entries().isEmpty())
                    .forEach(entry -> findings.add(kind.at(entry.id(), entry.what().name() + " was there last time.",
                            new Mend("Strike it.", List.of(new RemoveEntry(entry.id()))))));
            return findings;
        }
    }

    /** A list may use so many points and no more, whatever its limit is. */
    static final class Thrift extends TestCheck {
        Thrift() {
            super("Thrift", new FindingKind("spendthrift", Severity.BREACH, "Too many points are used."),
                    Parameter.count("Most", "Most points", "How many points a list may use.").presetTo(90));
        }

        @Override
        List<Finding> answer(Question question) {
            return BigDecimal.valueOf(question.used()).compareTo(question.number("Most")) <= 0 ? List.of()
                    : List.of(kind.at(question.list().id(), question.used() + " points are more than "
                            + question.number("Most").toPlainString() + "."));
        }
    }

    /** Refuses every list. */
    static final class Never extends TestCheck {
        Never() {
            super("Never", new FindingKind("no", Severity.BREACH, "No."));
        }

        @Override
        List<Finding> answer(Question question) {
            return List.of(kind.at(question.list().id(), "No, not even " + question.used() + " points."));
        }
    }

    /** Says something of every list, whatever it is. */
    static final class Always extends TestCheck {
        Always(String name) {
            super(name, new FindingKind("here", Severity.CAUTION, "Says so."));
        }

        @Override
        List<Finding> answer(Question question) {
            return List.of(kind.at(question.list().id(), "Here is " + question.player().orElseThrow().title() + ", round "
                    + question.round().orElseThrow().number() + ", " + question.used() + " points."));
        }
    }

    /** Is well until the third list, and throws. */
    static final class Failing extends TestCheck {
        Failing() {
            super("Failing", new FindingKind("here", Severity.BREACH, "Says so."));
        }

        @Override
        List<Finding> answer(Question question) {
            if (question.list().id().text().contains("Ombra")) {
                throw new IllegalStateException("no river");
            }
            return List.of(kind.at(question.list().id(), "Here."));
        }
    }
}
