package org.cantonment.stock.turnout;

import java.util.ArrayList;
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
import org.cantonment.stock.likeness.Accepted;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** A supply by numbers, and what may fill what of it; filled in once, asked from any thread. */
final class Store {

    private record Asked(List<Id> anyOf, Optional<Id> unit, Optional<Id> player) {
    }

    private final Catalogue catalogue;
    private final Supply supply;
    private final Allowance allowance;
    private final Lending lending;
    private final List<Id> types;
    private final Map<Id, Integer> numbers = new HashMap<>();
    private final Stack[] stacks;
    private final Map<Asked, Taker> takers = new ConcurrentHashMap<>();
    private final Map<List<Object>, Integer> alike = new HashMap<>();

    Store(Catalogue catalogue, Supply supply, Allowance allowance) {
        this(catalogue, supply, allowance, Lending.NONE);
    }

    /** @param lending whose each type of the supply is, and who may have it */
    Store(Catalogue catalogue, Supply supply, Allowance allowance, Lending lending) {
        this.lending = lending;
        this.catalogue = catalogue;
        this.supply = supply;
        this.allowance = allowance;
        Set<Id> all = new LinkedHashSet<>();
        supply.stacks().forEach(stack -> all.add(stack.what()));
        for (Frames frames : supply.frames()) {
            for (Way way : frames.ways()) {
                all.addAll(way.gives().keySet());
            }
        }
        allowance.conversions().forEach(conversion -> {
            all.add(conversion.to());
            all.addAll(conversion.from().keySet());
        });
        types = all.stream().sorted().toList();
        types.forEach(type -> numbers.put(type, numbers.size()));
        stacks = new Stack[types.size()];
        supply.stacks().forEach(stack -> stacks[numbers.get(stack.what())] = stack);
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
        return takers.computeIfAbsent(new Asked(need.anyOf(), need.unit(), lending.player(need.entry())), this::make);
    }

    private Taker make(Asked asked) {
        Accepted accepted = allowance.accepted(catalogue, asked.anyOf(), asked.unit());
        TakerMaker maker = new TakerMaker();
        accepted.types().forEach((type, truth) -> direct(maker, asked, type, truth, -1));
        accepted.standIns().forEach((line, may) -> {
            if (allowance.standIns().get(line).percent().isEmpty()) {
                may.forEach(type -> direct(maker, asked, type, Truth.STAND_IN, line));
            } else {
                List<Lending.Had> had = may.stream().flatMap(type -> lending.had(type, asked.player()).stream())
                        .filter(one -> numbers.containsKey(one.type())).toList();
                if (!had.isEmpty()) {
                    maker.share(new Taker.Share(line, had.stream().map(one -> numbers.get(one.type())).toList(),
                            had.stream().map(Lending.Had::lent).toList()));
                }
            }
        });
        Taker taker = maker.make();
        synchronized (alike) {
            return taker.numbered(alike.computeIfAbsent(taker.alike(), like -> alike.size()));
        }
    }

    private void direct(TakerMaker maker, Asked asked, Id type, Truth truth, int line) {
        for (Lending.Had had : lending.had(type, asked.player())) {
            Integer number = numbers.get(had.type());
            if (number != null) {
                maker.direct(number, truth.ordinal(), line, had.lent());
            }
        }
    }
}
