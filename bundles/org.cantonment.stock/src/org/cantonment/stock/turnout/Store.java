package org.cantonment.stock.turnout;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** A supply by numbers, and what may fill what of it; filled in once, asked from any thread. */
final class Store {

    private record Asked(List<Id> anyOf, Optional<Id> unit) {
    }

    private final Catalogue catalogue;
    private final Supply supply;
    private final Allowance allowance;
    private final List<Id> types;
    private final Map<Id, Integer> numbers = new HashMap<>();
    private final Stack[] stacks;
    private final Map<Id, int[]> meant = new ConcurrentHashMap<>();
    private final Map<Asked, Taker> takers = new ConcurrentHashMap<>();
    private final Map<List<Object>, Integer> alike = new HashMap<>();

    Store(Catalogue catalogue, Supply supply, Allowance allowance) {
        this.catalogue = catalogue;
        this.supply = supply;
        this.allowance = allowance;
        Set<Id> all = new LinkedHashSet<>();
        List<Stack> there = supply.stacks().stream().filter(stack -> stack.counted() > 0 || stack.unknown() > 0).toList();
        there.forEach(stack -> all.add(stack.what()));
        for (Frames frames : supply.frames()) {
            for (Way way : frames.ways()) {
                all.addAll(way.yields().keySet());
            }
        }
        allowance.conversions().forEach(conversion -> {
            all.add(conversion.to());
            all.addAll(conversion.from().keySet());
        });
        types = all.stream().sorted().toList();
        types.forEach(type -> numbers.put(type, numbers.size()));
        stacks = new Stack[types.size()];
        there.forEach(stack -> stacks[numbers.get(stack.what())] = stack);
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Supply supply() {
        return supply;
    }

    Allowance allowance() {
        return allowance;
    }

    List<Id> types() {
        return types;
    }

    int number(Id type) {
        return numbers.get(type);
    }

    /** What lies ready of the type; null if nothing does. */
    Stack stack(int type) {
        return stacks[type];
    }

    /** What may fill the need. */
    Taker taker(Requirement need) {
        return takers.computeIfAbsent(new Asked(need.anyOf(), need.unit()), this::make);
    }

    private Taker make(Asked asked) {
        TakerMaker maker = new TakerMaker();
        for (Id name : asked.anyOf()) {
            maker.direct(meant(name), Truth.EXACT.ordinal(), -1);
        }
        for (Id name : asked.anyOf()) {
            allowance.kindred(catalogue, name).ifPresent(family -> maker.direct(meant(family), Truth.KINDRED.ordinal(), -1));
        }
        if (!allowance.plain()) {
            standIns(asked, maker);
        }
        Taker taker = maker.make();
        synchronized (alike) {
            return taker.numbered(alike.computeIfAbsent(taker.alike(), like -> alike.size()));
        }
    }

    private void standIns(Asked asked, TakerMaker maker) {
        allowance.accepted(catalogue, asked.anyOf(), asked.unit()).standIns().forEach((line, may) -> {
            int[] had = numbers(may);
            if (allowance.standIns().get(line).percent().isEmpty()) {
                maker.direct(had, Truth.STAND_IN.ordinal(), line);
            } else if (had.length > 0) {
                maker.share(new Taker.Share(line, Arrays.stream(had).boxed().toList()));
            }
        });
    }

    /** What a name means of what is in the store. */
    private int[] meant(Id name) {
        int[] known = meant.get(name);
        if (known == null) {
            known = numbers(catalogue.meant(name));
            meant.put(name, known);
        }
        return known;
    }

    private int[] numbers(Set<Id> some) {
        int[] all = new int[some.size()];
        int size = 0;
        for (Id type : some) {
            Integer number = numbers.get(type);
            if (number != null) {
                all[size++] = number;
            }
        }
        int[] had = Arrays.copyOf(all, size);
        Arrays.sort(had);
        return had;
    }
}
