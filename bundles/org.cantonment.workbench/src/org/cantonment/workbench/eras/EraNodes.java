package org.cantonment.workbench.eras;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.cantonment.desk.eras.ChangeAnswer;
import org.cantonment.desk.eras.Changes;
import org.cantonment.desk.eras.EraAnswer;
import org.cantonment.desk.eras.ErasText;
import org.cantonment.desk.eras.ListEras;
import org.cantonment.desk.eras.Objection;
import org.cantonment.desk.eras.ShelfRows;
import org.cantonment.domain.finding.Finding;
import org.cantonment.editor.api.Severity;
import org.cantonment.editor.api.TextChange;
import org.cantonment.workbench.answers.AnswerNode;

/** What the view shows of an answer. */
final class EraNodes {

    private static final String LEAST = "Least change";
    private static final String NEXT = "Next best";

    private final ListEras answer;
    private final Function<ChangeAnswer, List<TextChange>> edits;

    private EraNodes(ListEras answer, Function<ChangeAnswer, List<TextChange>> edits) {
        this.answer = answer;
        this.edits = edits;
    }

    static List<AnswerNode> of(ListEras answer, Function<ChangeAnswer, List<TextChange>> edits) {
        EraNodes nodes = new EraNodes(answer, edits);
        return answer.eras().stream().map(nodes::era).toList();
    }

    /** The same of a shelf. */
    static List<AnswerNode> of(List<ShelfRows.Row> rows) {
        return rows.stream().map(row -> new AnswerNode(row.cells(), Optional.empty(), Optional.empty(), of(row.parts())))
                .toList();
    }

    private AnswerNode era(EraAnswer era) {
        List<AnswerNode> parts = new ArrayList<>();
        Set<String> breaches = new LinkedHashSet<>(era.lawful() ? ErasText.still(era.objections())
                : era.breaches().stream().map(Finding::message).toList());
        breaches.forEach(message -> parts.add(row("Breach", "", "", "", message).signed(Severity.BREACH)));
        era.atLarge().ifPresent(changes -> parts.addAll(changes(LEAST, era, changes)));
        if (answer.owned().known()) {
            parts.addAll(owned("With what " + answer.owned().who() + " owns", era));
        }
        Optional<ChangeAnswer> best = era.atLarge().flatMap(Changes::best);
        AnswerNode node = new AnswerNode(List.of(era.title() + (era.written() ? ", as written" : ""),
                era.legal() ? "Legal" : "Not legal", ErasText.total(era.points(), era.limit()),
                best.map(EraNodes::moved).orElse(""),
                era.legal() ? "" : best.map(ChangeAnswer::brief).orElseGet(() -> era.lawful()
                        ? ErasText.still(era.objections()).get(0) : "Nothing was found that makes it legal.")),
                Optional.empty(), best.map(change -> (Object) choice(era, change)), parts);
        return era.legal() ? node : node.signed(Severity.BREACH);
    }

    private List<AnswerNode> owned(String title, EraAnswer era) {
        if (era.owned().isEmpty()) {
            return List.of(row(title, standing(era.objections()), ErasText.total(era.points(), era.limit()), "", "All of it is there."));
        }
        return era.ownedIsSame() && era.owned().get().answers().size() == 1
                ? List.of(row(title, standing(era.owned().get().answers().get(0).objections()), "", "",
                        "The same: nothing is lacking for it."))
                : changes(title, era, era.owned().get());
    }

    private List<AnswerNode> changes(String title, EraAnswer era, Changes changes) {
        if (changes.answers().isEmpty()) {
            return List.of(row(title, "", "", "", changes.proof()));
        }
        List<AnswerNode> nodes = new ArrayList<>();
        for (ChangeAnswer change : changes.answers()) {
            List<AnswerNode> steps = new ArrayList<>();
            change.edits().forEach(edit -> steps.add(row("Step " + (steps.size() + 1), "", "", "", edit.words() + '.')));
            ErasText.still(change.objections()).forEach(words ->
                    steps.add(row("Breach", "", "", "", words).signed(Severity.BREACH)));
            if (nodes.isEmpty()) {
                steps.add(row("How sure", "", "", "", changes.proof()));
            }
            AnswerNode row = row(nodes.isEmpty() ? title : NEXT, standing(change.objections()),
                    ErasText.total(change.points(), era.limit()), moved(change), change.brief());
            nodes.add(new AnswerNode(row.cells(), Optional.empty(), Optional.of(choice(era, change)), steps));
        }
        return nodes;
    }

    // Of a list that is legal by the rules.
    private static String standing(List<Objection> objections) {
        return objections.isEmpty() ? "Legal" : "Legal by the rules only";
    }

    private EraChoice choice(EraAnswer era, ChangeAnswer change) {
        return new EraChoice(change.words(), era.title(), edits.apply(change));
    }

    private static String moved(ChangeAnswer change) {
        return ErasText.moved(change).replace(" moved", "");
    }

    private static AnswerNode row(String... cells) {
        return new AnswerNode(List.of(cells), Optional.empty(), Optional.empty(), List.of());
    }
}
