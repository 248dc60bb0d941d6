package org.cantonment.rules.tests;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** Judges in a test's few words. */
final class Court {

    private Court() {
    }

    static Ruling ruling(Occasion occasion, BookOf... books) {
        List<RuleSet> sets = Arrays.stream(books).map(BookOf::build).toList();
        return RulingCompiler.compile(sets, occasion);
    }

    static Occasion in(String era) {
        return Occasion.in(Id.of(era));
    }

    static Occasion in(String era, int round) {
        return new Occasion(Optional.of(Id.of(era)), OptionalInt.of(round), OptionalInt.empty(), Optional.empty());
    }

    static Verdict judge(Ruling ruling, ListOf list) {
        return Judge.judge(ruling, list.build(), Situation.BARE);
    }

    static Verdict judge(Ruling ruling, ListOf list, int points) {
        return Judge.judge(ruling, list.build(), Situation.BARE.withPoints(points, Optional.empty()));
    }

    /** The codes of all breaches. */
    static List<String> breaches(Verdict verdict) {
        return codes(verdict, Severity.BREACH);
    }

    static List<String> codes(Verdict verdict, Severity severity) {
        return verdict.findings(severity).stream().map(Finding::code).toList();
    }
}
