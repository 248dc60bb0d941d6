package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Task;
import org.cantonment.stock.turnout.Turnout;

/**
 * Whether what a player has can field a list.
 *
 * @param list     the list
 * @param title    what people call it
 * @param owner    whose shelf it is
 * @param when     as of when the shelf was looked at
 * @param task     what the list needs, and what may stand for what
 * @param there    what is there for it, with what is borrowed
 * @param turnout  who stands where, and why what is short is short
 * @param names    what people call entries and things
 * @param items    what no shelf holds and must be on the table
 * @param roll     what the campaign's roll leaves of it; empty outside a campaign
 * @param remarks  whole sentences: what is lent out, what cannot be borrowed, what is taken on trust
 * @param closing  whole sentences: what to buy at least cost where something is short; empty if nobody asked
 */
public record ListTurnout(ForceList list, String title, String owner, AsOf when, Task task, Supply there,
        Turnout turnout, Map<Id, String> names, List<ItemRow> items, Optional<RollRows> roll, List<String> remarks,
        List<String> closing) {
    public ListTurnout {
        names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
        items = List.copyOf(items);
        remarks = List.copyOf(remarks);
        closing = List.copyOf(closing);
    }

    /** What people call an entry, a piece type, a part or a line. */
    public String name(Id id) {
        return names.getOrDefault(id, id.name());
    }

    /** The needs that a shelf must fill, in the order of the list. */
    public List<Requirement> needs() {
        List<Requirement> needs = new ArrayList<>(task.needs());
        needs.removeAll(turnout.aside());
        return needs;
    }

    /** Whether all of it is there: the pieces on the shelf and the items said to be brought. */
    public boolean complete() {
        return turnout.complete();
    }

    /** The same with another turnout. */
    ListTurnout with(Turnout other) {
        return with(other, there);
    }

    /** The same with another turnout of what is there otherwise. */
    ListTurnout with(Turnout other, Supply otherwise) {
        return new ListTurnout(list, title, owner, when, task, otherwise, other, names, items, roll, remarks, closing);
    }

    /** The same, told what to buy. */
    public ListTurnout closedBy(List<String> words) {
        return new ListTurnout(list, title, owner, when, task, there, turnout, names, items, roll, remarks, words);
    }
}
