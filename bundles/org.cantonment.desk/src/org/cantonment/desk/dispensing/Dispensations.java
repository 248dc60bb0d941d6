package org.cantonment.desk.dispensing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Ruled;
import org.cantonment.notation.Document;
import org.cantonment.notation.names.NameTable;
import org.cantonment.notation.text.TextMend;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Basis;

/**
 * Offers a dispensation for every breach in a list for a campaign's round, be it of a rule, of a check of others or of the
 * limit of points: a line in the campaign that lets this player off it, at this unit, in this round, with the reason left
 * to be written.
 */
public final class Dispensations {
    private static final String TOO_LARGE = "count.too-large";
    private static final Set<String> OF_LIMIT = Set.of("points.over", "points.contingent-over");
    private static final String LIMIT = "the limit";

    private final Meanings meanings;
    private final Function<Id, Optional<Document>> documents;
    private final Map<Id, Optional<ExcuseLine>> lines = new HashMap<>();
    private Map<Id, String> names;

    /**
     * Good for one state of the books.
     *
     * @param documents the text of a campaign
     */
    public Dispensations(Meanings meanings, Function<Id, Optional<Document>> documents) {
        this.meanings = meanings;
        this.documents = documents;
    }

    /** What excuses a finding of a list, if the organiser may; nothing for what was not judged. */
    public Function<Finding, Optional<TextMend>> forList(Judged judged) {
        if (judged == null || judged.about().campaign().isEmpty() || judged.about().occasion().round().isEmpty()
                || judged.verdict().isEmpty()
                || judged.findings().stream().noneMatch(finding -> finding.severity() == Severity.BREACH)) {
            return finding -> Optional.empty();
        }
        Campaign campaign = meanings.campaigns().stream()
                .filter(one -> one.id().equals(judged.about().campaign().get())).findFirst().orElseThrow();
        Optional<ExcuseLine> line = lines.computeIfAbsent(campaign.id(), id -> documents.apply(id)
                .map(document -> new ExcuseLine(campaign, document)));
        Map<String, Basis> bases = bases(judged.verdict().get());
        Id player = judged.about().list().player().orElseThrow();
        return finding -> finding.severity() != Severity.BREACH ? Optional.empty() : line.flatMap(writer ->
                from(finding, bases, judged, campaign).map(from -> writer.write(player,
                        ListTitle.player(player, meanings), from.what(), from.at(),
                        judged.about().occasion().round().getAsInt())));
    }

    /** What somebody is let off, as a campaign writes it. */
    private record From(String what, Optional<String> at) {
    }

    private Optional<From> from(Finding finding, Map<String, Basis> bases, Judged judged, Campaign campaign) {
        Basis basis = bases.get(key(finding));
        if (basis == null) {
            return finding.rule().flatMap(rule -> campaign.checks().stream().filter(use -> use.id().equals(rule)).findFirst())
                    .map(use -> new From(use.name(), judged.about().list().takenAt(finding.at())
                            .flatMap(unit -> Optional.ofNullable(names().get(unit)))));
        }
        if (OF_LIMIT.contains(basis.finding().code())) {
            return Optional.of(new From(LIMIT, Optional.empty()));
        }
        // No rule says how long a list may be at all.
        String rule = basis.finding().code().equals(TOO_LARGE) ? null : nameOf(basis.card(), campaign);
        return Optional.ofNullable(rule).map(name -> new From(name, basis.subject().equals(basis.card())
                ? Optional.empty() : Optional.ofNullable(names().get(basis.subject()))));
    }

    // Bare, it would be the check of that name that the campaign turns on.
    private String nameOf(Id card, Campaign campaign) {
        boolean taken = campaign.checks().stream().anyMatch(use -> NameTable.fold(use.name())
                .equals(NameTable.fold(card.name())));
        String name = names().get(card);
        return name != null && taken ? card.book() + '/' + card.name() : name;
    }

    // What mends were tried, and what they were called after it, makes it no other finding.
    private static Map<String, Basis> bases(Verdict verdict) {
        Map<String, Basis> bases = new HashMap<>();
        verdict.bases().forEach(basis -> bases.putIfAbsent(key(basis.finding()), basis));
        return bases;
    }

    private static String key(Finding finding) {
        return finding.code() + ' ' + finding.at() + ' ' + finding.rule().map(Id::text).orElse("") + ' '
                + finding.message();
    }

    /** How a campaign names each card that a dispensation may be from: bare, or with its book where two books have it. */
    private Map<Id, String> names() {
        if (names == null) {
            names = new HashMap<>();
            Set<String> seen = new HashSet<>();
            Set<String> twice = new HashSet<>();
            List<Id> cards = meanings.ruleSets().stream().flatMap(Dispensations::cards).map(Ruled::id).distinct().toList();
            cards.stream().map(Id::name).filter(name -> !seen.add(name)).forEach(twice::add);
            cards.forEach(card -> names.put(card, twice.contains(card.name()) ? card.book() + '/' + card.name()
                    : card.name()));
        }
        return names;
    }

    private static Stream<Ruled> cards(RuleSet book) {
        return Stream.of(book.units(), book.formations(), book.supports(), book.limits()).flatMap(List::stream);
    }
}
