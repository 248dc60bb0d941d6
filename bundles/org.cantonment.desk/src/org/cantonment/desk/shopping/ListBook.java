package org.cantonment.desk.shopping;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Taken;
import org.cantonment.domain.rules.RuleSet;

/** A composed list as a book of its own: what stands in it, read again, is the same list. */
final class ListBook {
    private final Set<String> names = new TreeSet<>();
    private final Set<String> twice = new TreeSet<>();
    private final StringBuilder text = new StringBuilder();

    private ListBook(Meanings meanings) {
        meanings.campaigns().forEach(campaign -> campaign.players().forEach(player -> name(player.id())));
        for (RuleSet rules : meanings.ruleSets()) {
            Stream.of(rules.units(), rules.formations()).flatMap(List::stream).forEach(card -> name(card.id()));
        }
    }

    private void name(Id id) {
        if (!names.add(id.name())) {
            twice.add(id.name());
        }
    }

    /** "list by Ombra round 3", a blank line, and the list. */
    static String of(ForceList list, Id player, int round, Meanings meanings) {
        return new ListBook(meanings).write(list, player, round);
    }

    private String write(ForceList list, Id player, int round) {
        text.append("list by ").append(ref(player)).append(" round ").append(round).append('\n');
        for (Entry entry : list.body().entries()) {
            text.append('\n');
            entry(entry, 0);
        }
        if (!list.body().supports().isEmpty()) {
            text.append("\nsupport\n");
            list.body().supports().forEach(entry -> entry(entry, 1));
        }
        return text.toString();
    }

    /** A name that two books have is written with its own. */
    private String ref(Id id) {
        return twice.contains(id.name()) ? id.book() + '/' + id.name() : id.name();
    }

    private void entry(Entry entry, int depth) {
        text.append("  ".repeat(depth)).append(".".repeat(depth)).append(depth == 0 ? "" : " ");
        text.append(amount(entry.count())).append(ref(entry.what()));
        entry.strength().ifPresent(strength -> text.append(" of ").append(strength));
        for (Taken taken : entry.options()) {
            text.append(", ").append(amount(taken.count())).append(taken.option());
        }
        entry.alias().ifPresent(alias -> text.append(" as ").append(alias));
        entry.joins().ifPresent(host -> text.append(" joins ").append(host));
        text.append('\n');
        entry.body().entries().forEach(inner -> entry(inner, depth + 1));
    }

    private static String amount(int count) {
        return count == 1 ? "" : count + " ";
    }
}
