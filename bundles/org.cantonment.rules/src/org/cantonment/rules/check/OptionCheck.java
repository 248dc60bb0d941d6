package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.UnitView;

/** Options: known at this time, not too many, with those they need, one of each group. */
public final class OptionCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (Node node : about.muster().nodes()) {
            if (node.unit() != null && !node.entry().options().isEmpty()) {
                check(node, node.unit(), sink);
            }
        }
    }

    private static void check(Node node, UnitView unit, Sink sink) {
        Map<String, Integer> taken = new LinkedHashMap<>();
        for (Taken some : node.entry().options()) {
            taken.merge(some.option(), some.count(), Integer::sum);
        }
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (Map.Entry<String, Integer> some : taken.entrySet()) {
            OptionView option = unit.options().get(some.getKey());
            if (some.getValue() <= 0) {
                continue;
            }
            if (option == null) {
                missing(node, unit, some.getKey(), sink);
                continue;
            }
            if (some.getValue() > option.max()) {
                say(node, "option.too-many", option.rule(), unit.title() + " may have " + option.title() + " at most "
                        + option.max() + (option.max() == 1 ? " time" : " times") + ", not " + some.getValue() + '.',
                        List.of(set(node, option.name(), option.title(), option.max())), sink);
            }
            needs(node, unit, option, taken, sink);
            for (String group : option.groups()) {
                groups.computeIfAbsent(group, any -> new ArrayList<>()).add(option.name());
            }
        }
        groups.forEach((group, names) -> oneOf(node, unit, group, names, sink));
    }

    private static void missing(Node node, UnitView unit, String name, Sink sink) {
        Id past = unit.pastOptions().get(name);
        String message = "No option " + name + " for " + unit.title()
                + (past == null ? "." : " at this time.");
        sink.breach(unit.id(), unit.id(), past == null ? "option.unknown" : "option.not-now", node.entry().id(),
                Optional.ofNullable(past).or(() -> Optional.of(unit.id())), message,
                List.of(set(node, name, name, 0)));
    }

    private static void needs(Node node, UnitView unit, OptionView option, Map<String, Integer> taken, Sink sink) {
        for (String needed : option.needs()) {
            if (taken.getOrDefault(needed, 0) <= 0) {
                OptionView other = unit.options().get(needed);
                String title = other == null ? needed : other.title();
                List<Mend> mends = new ArrayList<>();
                if (other != null) {
                    mends.add(set(node, needed, title, 1));
                }
                mends.add(set(node, option.name(), option.title(), 0));
                say(node, "option.needs", option.rule(), unit.title() + " may have " + option.title() + " only with "
                        + title + '.', mends, sink);
            }
        }
    }

    private static void oneOf(Node node, UnitView unit, String group, List<String> names, Sink sink) {
        if (names.size() < 2) {
            return;
        }
        List<String> titles = new ArrayList<>();
        List<Mend> mends = new ArrayList<>();
        for (String name : names) {
            titles.add(unit.options().get(name).title());
            mends.add(set(node, name, unit.options().get(name).title(), 0));
        }
        say(node, "option.one-of", unit.options().get(names.get(1)).rule(), unit.title() + " may have only one of "
                + group + ", not " + Words.and(titles) + '.', mends, sink);
    }

    private static void say(Node node, String code, Id rule, String message, List<Mend> mends, Sink sink) {
        sink.breach(node.choice().id(), node.choice().id(), code, node.entry().id(), Optional.of(rule), message, mends);
    }

    private static Mend set(Node node, String name, String title, int count) {
        String label = count == 0 ? "Strike " + title + '.' : "Take " + count + ' ' + title + '.';
        return new Mend(label, List.of(new SetOption(node.entry().id(), name, count)));
    }
}
