package org.cantonment.workbench.adopting;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.adopting.Adoption;
import org.cantonment.desk.adopting.AdoptionText;
import org.cantonment.desk.adopting.ListChange;
import org.cantonment.desk.adopting.ListChange.Kind;
import org.cantonment.editor.api.Severity;
import org.cantonment.workbench.answers.AnswerNode;

/** What the view shows of a proposal: groups, in them lists, in them findings. */
final class AdoptingNodes {

    /**
     * A place that a row leads to.
     *
     * @param file the file
     * @param line from 1
     */
    record Place(Path file, int line) {
    }

    private AdoptingNodes() {
    }

    static List<AnswerNode> of(Adoption adoption) {
        List<AnswerNode> nodes = new ArrayList<>();
        if (!adoption.said().isEmpty()) {
            nodes.add(group("Said of the books", adoption.said().stream().map(f -> finding("", f)).toList()));
        }
        add("Not legal any more", adoption.of(Kind.NOW_BREACH), Optional.of(Severity.BREACH), nodes);
        add("Legal from now on", adoption.of(Kind.NO_LONGER_BREACH), Optional.empty(), nodes);
        add("Not legal for other reasons", adoption.of(Kind.OTHER_BREACHES), Optional.of(Severity.BREACH), nodes);
        add("Another total", adoption.of(Kind.TOTAL), Optional.empty(), nodes);
        nodes.add(AnswerNode.of("Unchanged (" + adoption.of(Kind.NONE).size() + ")", List.of()));
        return nodes;
    }

    private static void add(String title, List<ListChange> changes, Optional<Severity> sign, List<AnswerNode> nodes) {
        if (!changes.isEmpty()) {
            AnswerNode group = group(title, changes.stream().map(AdoptingNodes::list).toList());
            nodes.add(sign.map(group::signed).orElse(group));
        }
    }

    private static AnswerNode group(String title, List<AnswerNode> children) {
        return AnswerNode.of(title + " (" + children.size() + ")", children);
    }

    private static AnswerNode list(ListChange change) {
        List<AnswerNode> findings = new ArrayList<>();
        change.broken().forEach(finding -> findings.add(finding("Now: ", finding)));
        change.cleared().forEach(finding -> findings.add(finding("Gone: ", finding)));
        return new AnswerNode(List.of(change.title(), AdoptionText.points(change), change.file().getFileName().toString()),
                Optional.empty(), Optional.of(new Place(change.file(), 1)), findings);
    }

    private static AnswerNode finding(String lead, LocatedFinding finding) {
        return new AnswerNode(List.of(lead + finding.message(), "", finding.file().getFileName() + ", line "
                + finding.line()), Optional.empty(), Optional.of(new Place(finding.file(), finding.line())), List.of());
    }
}
