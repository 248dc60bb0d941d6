package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Option;
import org.cantonment.domain.rules.Without;
import org.cantonment.rules.view.OptionView;

/** Puts together what all lines say about each option: a higher or closer line changes only what it says. */
final class OptionMaker {

    private static final Cost FREE = new Cost(0, false);

    private final Map<String, OptionView> options = new LinkedHashMap<>();
    private final Map<String, Id> past = new TreeMap<>();

    OptionMaker(Card card) {
        Map<String, List<Said<Option>>> byName = new LinkedHashMap<>();
        for (Said<Option> said : card.holding(Option.class)) {
            byName.computeIfAbsent(said.fact().name(), any -> new ArrayList<>()).add(said);
        }
        for (Map.Entry<String, List<Said<Option>>> entry : byName.entrySet()) {
            List<Said<Option>> lines = entry.getValue();
            lines.sort(Comparator.<Said<Option>>comparingInt(Said::book).thenComparingInt(Said::closeness));
            lines.removeIf(said -> withdrawn(card, entry.getKey(), said));
            if (!lines.isEmpty()) {
                options.put(entry.getKey(), merge(lines));
            }
        }
        for (Said<Option> said : card.others(Option.class)) {
            if (!options.containsKey(said.fact().name())) {
                past.putIfAbsent(said.fact().name(), said.fact().id());
            }
        }
    }

    private boolean withdrawn(Card card, String name, Said<Option> said) {
        for (Said<Without> without : card.holding(Without.class)) {
            if (without.fact().names().contains(name) && !said.outranks(without)) {
                past.put(name, without.fact().id());
                return true;
            }
        }
        return false;
    }

    private static OptionView merge(List<Said<Option>> lines) {
        OptionView view = null;
        for (Said<Option> said : lines) {
            Option line = said.fact();
            OptionView under = view == null ? new OptionView(line.name(), line.name(), 1, FREE, List.of(), List.of(),
                    List.of(), List.of(), List.of(), line.id()) : view;
            view = new OptionView(line.name(), line.label().isEmpty() ? under.title() : line.label(),
                    line.max().orElse(under.max()), line.cost().orElse(under.cost()), said(line.adds(), under.adds()),
                    said(line.swaps(), under.swaps()), said(line.drops(), under.drops()),
                    said(line.needs(), under.needs()), said(line.groups(), under.groups()), line.id());
        }
        return view;
    }

    private static <T> List<T> said(List<T> said, List<T> under) {
        return said.isEmpty() ? under : said;
    }

    Map<String, OptionView> options() {
        return Collections.unmodifiableMap(options);
    }

    Map<String, Id> past() {
        return Collections.unmodifiableMap(past);
    }
}
