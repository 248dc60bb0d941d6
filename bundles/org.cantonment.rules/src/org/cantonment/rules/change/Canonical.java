package org.cantonment.rules.change;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;

/** One text for all lists that put the same on the table in the same formations, in whatever order. */
final class Canonical {

    private Canonical() {
    }

    static String key(ForceList list) {
        StringBuilder key = new StringBuilder();
        write(list.body(), key);
        list.contingents().forEach(contingent -> write(contingent.body(), key.append('\n')));
        return key.toString();
    }

    private static void write(Body body, StringBuilder key) {
        write(body.entries(), key);
        if (!body.supports().isEmpty()) {
            key.append('|');
            write(body.supports(), key);
        }
    }

    private static void write(List<Entry> entries, StringBuilder key) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Entry entry : entries) {
            counts.merge(text(entry), entry.count(), Integer::sum);
        }
        counts.forEach((text, count) -> key.append(count).append(' ').append(text).append(';'));
    }

    private static String text(Entry entry) {
        StringBuilder text = new StringBuilder(entry.what().text());
        entry.strength().ifPresent(strength -> text.append(" of ").append(strength));
        entry.options().forEach(taken -> text.append(',').append(taken.count()).append(' ').append(taken.option()));
        entry.billet().ifPresent(billet -> text.append(" in ").append(billet));
        entry.alias().ifPresent(alias -> text.append(" as ").append(alias));
        entry.joins().ifPresent(joins -> text.append(" joins ").append(joins));
        if (!entry.body().entries().isEmpty() || !entry.body().supports().isEmpty()) {
            text.append('(');
            write(entry.body(), text);
            text.append(')');
        }
        return text.toString();
    }
}
