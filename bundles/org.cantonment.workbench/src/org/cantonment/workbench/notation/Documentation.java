package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.model.book.Named;
import org.cantonment.model.ruleset.Let;
import org.cantonment.notation.names.Kinds;
import org.cantonment.notation.reading.LetType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** What is said of a thing when the pointer rests on its name: what it is, its explanation, its card. */
final class Documentation {

    private static final int MOST_LINES = 12;

    private Documentation() {
    }

    static String of(EObject thing) {
        EObject card = thing;
        while (card != null && !(card instanceof Named)) {
            card = card.eContainer();
        }
        ICompositeNode node = card == null ? null : NodeModelUtils.findActualNodeFor(card);
        if (node == null) {
            return "";
        }
        String whole = node.getRootNode().getText();
        Named named = (Named) card;
        List<String> lines = new ArrayList<>();
        if (card instanceof Let let) {
            lines.add(NodeModelUtils.getTokenText(node));
            LetType.of(let).ifPresent(type -> lines.add("Stands for " + type.words() + "."));
            lines.addAll(explanation(whole, node.getOffset()));
            return String.join("\n", lines);
        }
        String label = named.getLabel() == null || named.getLabel().isEmpty() ? "" : " \"" + named.getLabel() + "\"";
        lines.add(Kinds.of(card.eClass()) + " " + named.getName() + label);
        lines.addAll(explanation(whole, node.getOffset()));
        String[] body = whole.substring(node.getOffset(), node.getEndOffset()).stripTrailing().split("\\R");
        for (int i = 1; i < body.length && i <= MOST_LINES; i++) {
            lines.add(body[i].stripTrailing());
        }
        if (body.length > MOST_LINES + 1) {
            lines.add("  …");
        }
        return String.join("\n", lines);
    }

    /** The remarks with two signs that stand right above. */
    private static List<String> explanation(String text, int offset) {
        List<String> lines = new ArrayList<>();
        String[] above = text.substring(0, text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1).split("\\R");
        for (int i = above.length - 1; i >= 0 && above[i].strip().startsWith("##"); i--) {
            lines.add(0, above[i].strip().substring(2).strip());
        }
        return lines;
    }
}
