package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiPredicate;

import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.UnitView;

/** A unit with options, as many of each as are worth a try: never more than it may have, only one of a group, with what they need. */
final class Variants {

    private static final int MOST = 12;

    private final Taking plain;
    private final Set<Taking> all = new LinkedHashSet<>();
    private boolean complete = true;

    Variants(Taking plain) {
        this.plain = plain;
    }

    /** What was found, without the plain one. */
    Set<Taking> all() {
        return all;
    }

    /** Whether nothing that was asked for was left out. */
    boolean complete() {
        return complete;
    }

    /** Options that are asked for, each and together: once, as often as can be, and as often as is asked. */
    void asked(Map<String, Set<Integer>> options) {
        for (OptionView option : plain.unit().options().values()) {
            if (options.containsKey(option.name())) {
                List<Taking> bases = new ArrayList<>(all);
                bases.add(0, plain);
                for (Taking base : bases) {
                    for (int times : times(option, options.get(option.name()))) {
                        with(base, option, times).ifPresent(this::add);
                    }
                }
            }
        }
    }

    private void add(Taking taking) {
        if (all.size() < MOST) {
            all.add(taking);
        } else {
            complete = false;
        }
    }

    /**
     * Options that cost no money: each by itself, and all of them, of each group the one that uses most points; beside what is
     * asked for, those that are not.
     *
     * @param free whether the second costs no more than the first
     */
    void free(Set<String> asked, BiPredicate<Taking, Taking> free) {
        List<Taking> bases = List.copyOf(all);
        List<OptionView> dearest = new ArrayList<>(plain.unit().options().values());
        dearest.sort(Comparator.comparingLong((OptionView option) -> -option.cost().times(1)));
        for (OptionView option : dearest) {
            for (int times : times(option, Set.of())) {
                with(plain, option, times).filter(one -> free.test(plain, one)).ifPresent(all::add);
            }
        }
        together(plain, dearest, free);
        dearest.removeIf(option -> asked.contains(option.name()));
        together(plain, dearest, free);
        bases.forEach(base -> together(base, dearest, free));
        all.remove(plain);
    }

    private void together(Taking base, List<OptionView> options, BiPredicate<Taking, Taking> free) {
        Taking together = base;
        for (OptionView option : options) {
            for (int times : times(option, Set.of())) {
                Taking before = together;
                together = with(before, option, times).filter(one -> free.test(before, one)).orElse(before);
            }
        }
        all.add(together);
    }

    private static Set<Integer> times(OptionView option, Set<Integer> asked) {
        Set<Integer> times = new TreeSet<>(asked);
        times.add(1);
        times.add(option.max());
        times.removeIf(count -> count < 1 || count > option.max());
        return times;
    }

    /** Empty if one of its options shuts out another, or needs what there is not. */
    private static Optional<Taking> with(Taking base, OptionView option, int times) {
        Map<String, Integer> options = new TreeMap<>(base.options());
        options.put(option.name(), times);
        UnitView unit = base.unit();
        for (int more = -1; more < options.size();) {
            more = options.size();
            for (String name : List.copyOf(options.keySet())) {
                unit.options().get(name).needs().forEach(needed -> options.putIfAbsent(needed, 1));
            }
            if (!unit.options().keySet().containsAll(options.keySet())) {
                return Optional.empty();
            }
        }
        List<String> groups = options.keySet().stream().flatMap(name -> unit.options().get(name).groups().stream()).toList();
        return groups.size() == Set.copyOf(groups).size() ? Optional.of(new Taking(unit, base.strength(), options)) : Optional.empty();
    }
}
