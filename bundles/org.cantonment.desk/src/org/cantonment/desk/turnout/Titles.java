package org.cantonment.desk.turnout;

import java.util.Map;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;
import org.cantonment.stock.turnout.Task;

/** What people call the things that an answer may speak of: pieces, parts, ways to build, conversions. */
final class Titles {
    private final Catalogue catalogue;
    private final Task task;
    private final Supply supply;

    Titles(Catalogue catalogue, Task task, Supply supply) {
        this.catalogue = catalogue;
        this.task = task;
        this.supply = supply;
    }

    void addTo(Map<Id, String> names) {
        for (Requirement need : task.needs()) {
            need.anyOf().forEach(id -> {
                name(id, names);
                catalogue.meant(id).forEach(type -> name(type, names));
            });
        }
        supply.stacks().forEach(stack -> name(stack.what(), names));
        for (Frames frames : supply.frames()) {
            name(frames.part(), names);
            for (Way way : frames.ways()) {
                way.yields().keySet().forEach(type -> name(type, names));
                names.put(way.build(), things(way.gives()));
            }
        }
        for (Conversion conversion : task.allowance().conversions()) {
            name(conversion.to(), names);
            names.put(conversion.line(), things(conversion.from()) + " into " + conversion.gives() + " "
                    + catalogue.title(conversion.to()));
        }
    }

    private void name(Id id, Map<Id, String> names) {
        names.putIfAbsent(id, catalogue.title(id));
    }

    private String things(Map<Id, Integer> counts) {
        return counts.entrySet().stream().map(one -> one.getValue() + " " + catalogue.title(one.getKey()))
                .collect(Collectors.joining(" and "));
    }
}
