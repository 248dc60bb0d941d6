package org.cantonment.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Expectation;
import org.cantonment.domain.rules.RuleExample;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Basis;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** Plays the examples of a rule book, and says where one does not give what its writer expects. */
public final class Trials {

    private Trials() {
    }

    /**
     * Plays all examples of a book. Every breach and caution must be expected and every expectation met; notes need not
     * be. An expectation that names a unit asks for a finding at one of its entries, or at a formation of that name.
     *
     * @param book the book whose examples are played
     * @param books that book and all that it stands over
     */
    public static List<Finding> play(RuleSet book, List<RuleSet> books, CancelToken cancel) {
        List<Finding> findings = new ArrayList<>();
        for (RuleExample example : book.examples()) {
            cancel.check();
            Occasion occasion = new Occasion(example.era(), example.round(), OptionalInt.empty(), Optional.empty());
            Ruling ruling = RulingCompiler.compile(books, occasion);
            ForceList list = new ForceList(example.id(), Optional.empty(), example.round(), List.of(), example.era(),
                    example.points(), example.body(), List.of(), List.of(), List.of(), List.of());
            Situation situation = Situation.BARE.withCancel(cancel);
            if (example.points().isPresent()) {
                situation = situation.withPoints(example.points().getAsInt(), Optional.of(example.id()));
            }
            compare(example, Judge.judge(ruling, list, situation), findings);
        }
        return List.copyOf(findings);
    }

    private static void compare(RuleExample example, Verdict verdict, List<Finding> findings) {
        Map<Id, Id> whats = new TreeMap<>();
        gather(example.body(), whats);
        List<Basis> unexpected = new ArrayList<>(verdict.bases());
        unexpected.removeIf(basis -> basis.finding().severity() == Severity.NOTE);
        for (Expectation expected : example.gives()) {
            if (expected.nothing()) {
                continue;
            }
            boolean met = verdict.bases().stream().anyMatch(basis -> meets(expected, basis, whats));
            unexpected.removeIf(basis -> meets(expected, basis, whats));
            if (!met) {
                findings.add(differs(expected.id(), example, "should give a " + name(expected) + " and does not"));
            }
        }
        for (Basis basis : unexpected) {
            Optional<Id> line = example.gives().stream().map(Expectation::id).findFirst();
            findings.add(differs(line.orElse(example.id()), example, "gives what it does not say: "
                    + basis.finding().message()));
        }
    }

    private static boolean meets(Expectation expected, Basis basis, Map<Id, Id> whats) {
        Id at = whats.get(basis.finding().at());
        return expected.severity().equals(Optional.of(basis.finding().severity()))
                && expected.rule().equals(Optional.of(basis.card()))
                && (expected.at().isEmpty() || expected.at().get().equals(at)
                        || expected.at().get().equals(basis.subject()));
    }

    private static void gather(Body body, Map<Id, Id> whats) {
        List<Entry> entries = new ArrayList<>(body.entries());
        entries.addAll(body.supports());
        for (Entry entry : entries) {
            whats.put(entry.id(), entry.what());
            gather(entry.body(), whats);
        }
    }

    private static String name(Expectation expected) {
        return expected.severity().map(severity -> severity.name().toLowerCase(Locale.ROOT)).orElse("finding")
                + expected.rule().map(rule -> " of " + rule.name()).orElse("")
                + expected.at().map(at -> " at " + at.name()).orElse("");
    }

    private static Finding differs(Id at, RuleExample example, String how) {
        String end = how.endsWith(".") ? "" : ".";
        return Finding.of("example.differs", Severity.BREACH, at, "Example " + example.title() + ' ' + how + end);
    }
}
