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
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Ruled;
import org.cantonment.notation.Document;
import org.cantonment.notation.text.TextMend;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Basis;

/**
 * Offers a dispensation for every breach of a rule in a list for a campaign's round: a line in the campaign that lets this
 * player off this rule, at this unit, in this round, with the reason left to be written.
 */
public final class Dispensations {
    private static final String TOO_LARGE = "count.too-large";

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
                || judged.verdict().filter(verdict -> !verdict.legal()).isEmpty()) {
            return finding -> Optional.empty();
        }
        Optional<ExcuseLine> line = lines.computeIfAbsent(judged.about().campaign().get(), this::line);
        Map<String, Basis> bases = bases(judged.verdict().get());
        return finding -> finding.severity() != Severity.BREACH ? Optional.empty()
                : line.flatMap(writer -> Optional.ofNullable(bases.get(key(finding)))
                        .flatMap(basis -> mend(judged, basis, writer)));
    }

    private Optional<ExcuseLine> line(Id campaign) {
        return meanings.campaigns().stream().filter(one -> one.id().equals(campaign)).findFirst()
                .flatMap(one -> documents.apply(campaign).map(document -> new ExcuseLine(one, document)));
    }

    private Optional<TextMend> mend(Judged judged, Basis basis, ExcuseLine line) {
        String rule = basis.finding().code().equals(TOO_LARGE) ? null : names().get(basis.card());
        if (rule == null) {
            return Optional.empty(); // no rule says it: the round's limit of points does, say, or the size of a list
        }
        Optional<String> at = basis.subject().equals(basis.card()) ? Optional.empty()
                : Optional.ofNullable(names().get(basis.subject()));
        Id player = judged.about().list().player().orElseThrow();
        return Optional.of(line.write(player, ListTitle.player(player, meanings), rule, at,
                judged.about().occasion().round().getAsInt()));
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
