package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cantonment.editor.api.OutlineNode;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

/** The lines of a book as an outline: each line under the line it belongs to. */
final class BookOutline {

    private static final int WIDEST = 80;
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"?");

    private BookOutline() {
    }

    static List<OutlineNode> of(XtextResource resource) {
        List<OutlineNode> nodes = new ArrayList<>();
        for (EObject book : resource.getContents()) {
            nodes.add(node(book));
        }
        return nodes;
    }

    private static OutlineNode node(EObject line) {
        List<OutlineNode> children = new ArrayList<>();
        EStructuralFeature lines = line.eClass().getEStructuralFeature("lines");
        if (lines != null && lines.isMany()) {
            for (Object child : (List<?>) line.eGet(lines)) {
                children.add(node((EObject) child));
            }
        }
        ICompositeNode place = NodeModelUtils.findActualNodeFor(line);
        String text = place == null ? "" : firstLine(place.getText());
        Matcher quoted = QUOTED.matcher(text);
        String detail = quoted.find() ? quoted.group(1).strip() : "";
        String label = quoted.replaceFirst("").replaceAll("\\s+(?=,|\\s|$)", "").strip();
        return new OutlineNode(label, detail, children.isEmpty() ? "line" : "card", place == null ? 0 : place.getOffset(),
                place == null ? 0 : place.getLength(), children);
    }

    /** The line as it reads, without the dots that only say where it belongs, and without its remark. */
    private static String firstLine(String text) {
        for (String line : text.split("\\R")) {
            String bare = line.replaceFirst("^[\\s.]+", "").strip();
            if (!bare.isEmpty() && !bare.startsWith("#")) {
                int remark = bare.indexOf(" #");
                String plain = remark < 0 ? bare : bare.substring(0, remark).strip();
                return plain.length() <= WIDEST ? plain : plain.substring(0, WIDEST) + "…";
            }
        }
        return "";
    }
}
