package org.cantonment.notation.names;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.model.book.Book;
import org.cantonment.model.book.Line;
import org.cantonment.model.book.Named;
import org.cantonment.model.campaign.CheckUse;
import org.cantonment.model.campaign.Round;
import org.cantonment.model.force.ForceList;
import org.cantonment.model.range.Box;
import org.cantonment.model.range.Printing;
import org.cantonment.model.range.Seller;
import org.cantonment.model.ruleset.Billet;
import org.cantonment.model.ruleset.Change;
import org.cantonment.model.ruleset.Formation;
import org.cantonment.model.ruleset.Let;
import org.cantonment.model.ruleset.Limit;
import org.cantonment.model.ruleset.Option;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.model.ruleset.Unit;
import org.cantonment.model.shelf.Shelf;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** What a book calls by name. */
public final class BookNames {

    private BookNames() {
    }

    /**
     * @param book a book
     * @return its own name and all names in it, in text order; things without a name are left out. A check is there by the
     *         name that its plug-in gives it, as often as the book turns it on
     */
    public static List<Entry> of(Book book) {
        String bookName = nameOf(book);
        List<Entry> entries = new ArrayList<>(book.getLines().size() + 1);
        add(entries, bookName, "", bookName, book);
        for (Line line : book.getLines()) {
            if (line instanceof Named named) {
                add(entries, named.getName(), "", bookName, named);
            } else if (line instanceof CheckUse check) {
                add(entries, check.getName(), "", bookName, check);
            }
            inner(line, bookName, entries);
        }
        return entries;
    }

    private static void inner(Line card, String book, List<Entry> entries) {
        String owner = ownerName(card);
        boolean bare = card instanceof Round || card instanceof Seller;
        if (!bare && owner.isEmpty()) {
            return;
        }
        for (Line line : card.getLines()) {
            if (line instanceof Named named && (bare || belongs(line))) {
                add(entries, named.getName(), owner, book, named);
            }
        }
    }

    private static boolean belongs(Line line) {
        return line instanceof Option || line instanceof Billet || line instanceof Printing || line instanceof Let;
    }

    private static String ownerName(Line card) {
        if (card instanceof Change change) {
            return textOf(change, RulesetPackage.Literals.CHANGE__TARGET);
        }
        boolean owns = card instanceof Unit || card instanceof Formation || card instanceof Limit || card instanceof Box;
        String name = owns ? ((Named) card).getName() : null;
        return name == null ? "" : name;
    }

    /** @return the bare name as written for a reference, without asking what it means; empty if there is none */
    static String textOf(EObject object, EStructuralFeature feature) {
        List<INode> nodes = NodeModelUtils.findNodesForFeature(object, feature);
        if (nodes.isEmpty()) {
            return "";
        }
        String text = NodeModelUtils.getTokenText(nodes.get(0));
        return text.substring(text.indexOf('/') + 1);
    }

    /** @return the name of a book; empty for a book that has none */
    public static String nameOf(EObject book) {
        String name = book instanceof Named named ? named.getName()
                : book instanceof ForceList list ? list.getName() : book instanceof Shelf shelf ? shelf.getName() : null;
        return name == null ? "" : name;
    }

    private static void add(List<Entry> entries, String name, String owner, String book, EObject object) {
        if (name != null && !name.isEmpty()) {
            entries.add(new Entry(name, owner, book, object));
        }
    }
}
