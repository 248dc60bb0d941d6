package org.cantonment.workbench.eras;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.cantonment.desk.eras.ChangeAnswer;
import org.cantonment.desk.eras.Changes;
import org.cantonment.desk.eras.EraAnswer;
import org.cantonment.desk.eras.ErasText;
import org.cantonment.desk.eras.ListEras;
import org.cantonment.domain.finding.Finding;
import org.cantonment.editor.api.Severity;
import org.cantonment.editor.api.TextChange;
import org.cantonment.workbench.answers.AnswerNode;

/** What the view shows of an answer. */
final class EraNodes {

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

    private AnswerNode era(EraAnswer era) {
        List<AnswerNode> parts = new ArrayList<>();
        new LinkedHashSet<>(era.breaches().stream().map(Finding::message).toList())
                .forEach(message -> parts.add(AnswerNode.of("Breach: " + message, List.of()).signed(Severity.BREACH)));
        era.atLarge().ifPresent(changes -> parts.addAll(changes("Least change", era, changes)));
        era.owned().filter(changes -> !era.ownedIsSame())
                .ifPresent(changes -> parts.addAll(changes("With what " + answer.owned().who() + " owns", era, changes)));
        List<String> cells = List.of(era.title() + (era.written() ? ", as written" : ""),
                era.legal() ? "Legal" : "Not legal", ErasText.total(era.points(), era.limit()),
                era.atLarge().map(EraNodes::brief).orElse("none needed"), owned(era));
        AnswerNode node = new AnswerNode(cells, Optional.empty(), Optional.empty(), parts);
        return era.legal() ? node : node.signed(Severity.BREACH);
    }

    private String owned(EraAnswer era) {
        if (!answer.owned().known()) {
            return "not known";
        }
        return era.owned().isEmpty() ? "all is there" : era.ownedIsSame() ? "the same"
                : EraNodes.brief(era.owned().get());
    }

    private static String brief(Changes changes) {
        return changes.best().map(best -> ErasText.moved(best) + ": " + best.brief()).orElse("none found");
    }

    private List<AnswerNode> changes(String title, EraAnswer era, Changes changes) {
        if (changes.answers().isEmpty()) {
            return List.of(AnswerNode.of(title + ": none. " + changes.proof(), List.of()));
        }
        List<AnswerNode> nodes = new ArrayList<>();
        for (ChangeAnswer change : changes.answers()) {
            List<AnswerNode> steps = new ArrayList<>();
            change.edits().forEach(edit -> steps.add(AnswerNode.of(edit.words() + '.', List.of())));
            if (nodes.isEmpty()) {
                steps.add(AnswerNode.of(changes.proof(), List.of()));
            }
            String head = (nodes.isEmpty() ? title : "Next best") + ": " + ErasText.moved(change) + ", "
                    + ErasText.total(change.points(), era.limit()) + " after it.";
            nodes.add(AnswerNode.of(head, steps).meaning(new EraChoice(change.words(), era.title(), edits.apply(change))));
        }
        return nodes;
    }
}
