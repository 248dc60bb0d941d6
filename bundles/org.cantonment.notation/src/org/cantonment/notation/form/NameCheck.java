package org.cantonment.notation.form;

import java.lang.Character.UnicodeScript;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.finding.Severity;
import org.cantonment.model.book.Book;
import org.cantonment.model.campaign.CheckUse;
import org.cantonment.model.campaign.Round;
import org.cantonment.notation.names.BookNames;
import org.cantonment.notation.names.Entry;
import org.cantonment.notation.names.NameTable;
import org.cantonment.notation.reading.Reading;
import org.eclipse.emf.ecore.EObject;

/** Finds names that one book gives twice, that mix scripts, or that are longer than anybody can say. */
public final class NameCheck {

    /** Longest name that is accepted, in UTF-16 units. */
    public static final int LONGEST = 64;

    private NameCheck() {
    }

    /**
     * @param book    a book
     * @param reading takes the problems
     */
    public static void check(Book book, Reading reading) {
        Map<String, Entry> seen = new HashMap<>();
        List<Entry> entries = BookNames.of(book);
        for (Entry entry : entries) {
            EObject object = entry.getEObjectOrProxy();
            if (object instanceof CheckUse) {
                continue; // not this book, but a plug-in gave it its name
            }
            if (entry.owner().isEmpty() && !(object.eContainer() instanceof Round)) {
                Entry first = seen.putIfAbsent(NameTable.fold(entry.name()), entry);
                if (first != null) {
                    reading.problem(object, null, Severity.BREACH, Codes.DUPLICATE, "The name " + entry.name()
                            + " is taken: this book gives it to " + kind(first) + " already.");
                }
            }
            if (mixesScripts(entry.name())) {
                reading.problem(object, null, Severity.CAUTION, Codes.SCRIPTS,
                        "This name mixes letters of several scripts; some look alike and are not.");
            }
            if (entry.name().length() > LONGEST) {
                reading.problem(object, null, Severity.BREACH, Codes.LONG, "A name has at most " + LONGEST
                        + " characters; a longer one belongs in quotes beside it.");
            }
        }
    }

    private static String kind(Entry entry) {
        return "a " + org.cantonment.notation.names.Kinds.of(entry.type());
    }

    private static boolean mixesScripts(String name) {
        UnicodeScript first = null;
        for (int i = 0; i < name.length(); i++) {
            UnicodeScript script = UnicodeScript.of(name.charAt(i));
            if (script == UnicodeScript.COMMON || script == UnicodeScript.INHERITED) {
                continue;
            }
            if (first == null) {
                first = script;
            } else if (first != script) {
                return true;
            }
        }
        return false;
    }
}
