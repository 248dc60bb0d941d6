package org.cantonment.notation.text;

import java.util.List;

import org.cantonment.model.book.Book;
import org.cantonment.model.book.Named;
import org.cantonment.model.campaign.CheckUse;
import org.cantonment.model.force.Entry;
import org.cantonment.model.force.ForcePackage;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.util.ITextRegion;
import org.eclipse.xtext.util.TextRegion;

/** Where things stand in their text. */
public final class Regions {

    private Regions() {
    }

    /**
     * @param object  a part of a document
     * @param feature the part of it that is meant; null for what best stands for the whole: its name, the unit of an
     *                entry, or its own line without blanks and the lines below
     * @param index   which of several values
     * @param text    the document's text
     * @return the place; at the text's start and empty for an object without a text
     */
    public static ITextRegion of(EObject object, EStructuralFeature feature, int index, CharSequence text) {
        EStructuralFeature telling = feature != null ? feature : telling(object);
        if (telling != null) {
            List<INode> nodes = NodeModelUtils.findNodesForFeature(object, telling);
            if (index < nodes.size()) {
                return clip(nodes.get(index).getTextRegion(), text);
            }
        }
        ICompositeNode node = NodeModelUtils.findActualNodeFor(object);
        return node == null ? new TextRegion(0, 0) : clip(node.getTextRegion(), text);
    }

    private static EStructuralFeature telling(EObject object) {
        if (object instanceof Entry) {
            return ForcePackage.Literals.ENTRY__WHAT;
        }
        return object instanceof Named || object instanceof Book || object instanceof CheckUse
                ? object.eClass().getEStructuralFeature("name") : null;
    }

    /** The first line of a region, without the blanks at its end. */
    private static ITextRegion clip(ITextRegion region, CharSequence text) {
        int start = Math.min(region.getOffset(), text.length());
        int end = start;
        int limit = Math.min(text.length(), region.getOffset() + region.getLength());
        while (end < limit && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return new TextRegion(start, end - start);
    }
}
