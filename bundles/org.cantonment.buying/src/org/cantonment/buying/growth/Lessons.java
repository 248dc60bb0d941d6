package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Relation;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.TakingView;

/**
 * What the judge's refusals teach. A rule that can be counted becomes a cut: no draft is tried again that it refuses. Where
 * a list has too many points, so has each that holds all of it. Of anything else it is known that this very list is not
 * legal, and what would mend it is tried.
 */
final class Lessons {

    /** After so many refusals nobody is taken any more who must join somebody. */
    private static final int UNJOINED = 40;

    private final Brief brief;
    private final Map<Id, Integer> unjoined = new HashMap<>();
    private final Map<Id, LimitView> limits = new HashMap<>();
    private final Map<Id, LimitLine> lines = new HashMap<>();
    private final Set<Id> told = new HashSet<>();
    private final List<Cut> cuts = new ArrayList<>();
    private final Set<String> refused = new HashSet<>();
    private final List<Map<String, Integer>> tooDear = new ArrayList<>();
    private final Set<Integer> without = new TreeSet<>();
    private final Set<Id> wanted = new TreeSet<>();
    private final Map<String, Set<Integer>> options = new TreeMap<>();
    private final Map<String, Integer> reasons = new TreeMap<>();

    Lessons(Brief brief) {
        this.brief = brief;
        for (LimitView limit : brief.ruling().limits()) {
            limit.lines().forEach(line -> {
                lines.put(line.id(), line);
                limits.put(line.id(), limit);
            });
        }
    }

    /** Learns from a draft that was refused; whether anything was learned that helps with others. */
    boolean learn(Draft draft, Verdict verdict) {
        refused.add(draft.key());
        boolean learned = false;
        for (Finding finding : verdict.findings(Severity.BREACH)) {
            reasons.merge(finding.rule().map(this::title).orElse(finding.message()), 1, Integer::sum);
            if (finding.code().equals("points.over")) {
                tooDear.add(draft.counts());
            } else {
                learned |= rule(finding) | mends(finding);
            }
        }
        return learned;
    }

    private String title(Id rule) {
        LimitView limit = limits.get(rule);
        return limit == null ? brief.ruling().title(rule.card()) : limit.title();
    }

    /** Learns from what is unwise about a legal list: what can be counted of it is avoided where that is possible. */
    boolean learnAdvice(Verdict verdict) {
        boolean learned = false;
        for (Finding finding : verdict.findings(Severity.CAUTION)) {
            LimitLine line = finding.rule().map(lines::get).orElse(null);
            if (line != null && limits.get(line.id()).conditions().isEmpty() && told.add(line.id())) {
                Optional<Cut> cut = Cut.of(line, brief);
                cut.ifPresent(one -> cuts.add(one.advice()));
                learned |= cut.isPresent();
            }
        }
        return learned;
    }

    private boolean rule(Finding finding) {
        LimitLine line = finding.rule().map(lines::get).orElse(null);
        if (line == null || !limits.get(line.id()).conditions().isEmpty()) {
            return false;
        }
        if (!told.add(line.id())) {
            return line instanceof TakingView taking && taking.taking().relation() == Relation.JOINS && leaves(taking);
        }
        Optional<Cut> cut = Cut.of(line, brief);
        cut.ifPresent(cuts::add);
        return cut.isPresent();
    }

    /** Whoever finds nobody to join again and again is left out: there may be somebody, but never at the right place. */
    private boolean leaves(TakingView taking) {
        boolean any = false;
        if (unjoined.merge(taking.id(), 1, Integer::sum) >= UNJOINED) {
            for (Choice choice : brief.ruling().choices()) {
                any |= taking.subjects().takes(choice.index()) && without.add(choice.index());
            }
        }
        return any;
    }

    private boolean mends(Finding finding) {
        boolean learned = false;
        for (Mend mend : finding.mends()) {
            for (Action action : mend.actions()) {
                if (action instanceof AddUnit add) {
                    learned |= wanted.add(add.unit());
                } else if (action instanceof ReplaceUnit replace) {
                    learned |= wanted.add(replace.unit());
                } else if (action instanceof SetOption set && set.count() > 0) {
                    learned |= options.computeIfAbsent(set.option(), key -> new TreeSet<>()).add(set.count());
                }
            }
        }
        return learned;
    }

    /** Whether a draft is known to be refused, for what no cut says. */
    boolean refuses(Draft draft) {
        if (refused.contains(draft.key())) {
            return true;
        }
        Map<String, Integer> counts = tooDear.isEmpty() ? Map.of() : draft.counts();
        return tooDear.stream().anyMatch(one -> one.entrySet().stream()
                .allMatch(some -> counts.getOrDefault(some.getKey(), 0) >= some.getValue()));
    }

    List<Cut> cuts() {
        return cuts;
    }

    /** Whether something is left out of all drafts, since it asks for what no draft has. */
    boolean leavesOut(Choice choice) {
        return without.contains(choice.index());
    }

    /** What would have mended a list that was refused. */
    Set<Id> wanted() {
        return wanted;
    }

    /** The options that would have, and how many of them. */
    Map<String, Set<Integer>> options() {
        return options;
    }

    /** What stood in the way most often; empty if nothing was refused. */
    Optional<String> reason() {
        return reasons.entrySet().stream().max(Map.Entry.<String, Integer>comparingByValue()
                .thenComparing(Map.Entry.<String, Integer>comparingByKey().reversed())).map(Map.Entry::getKey);
    }
}
