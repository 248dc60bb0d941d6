package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.shelf.Taste;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.view.AlwaysView;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/**
 * What lists of a stage can be made of: the units and formations that may be taken and are not unwanted, with what they need
 * and about what that costs.
 */
final class Larder {

    private static final int UNITS = 10;
    private static final int TRAITS = 24;

    private final Brief brief;
    private final Guide guide;
    private final Lessons lessons;
    private final boolean last;
    private final Reckoner reckoner;
    private final Map<String, Item> items = new HashMap<>();
    private final Map<Selector, List<Item>> choices = new HashMap<>();
    private final List<Id> traits = new ArrayList<>();
    private final Set<Id> never = new TreeSet<>();
    private final Set<Id> first = new TreeSet<>();
    private final Map<String, Set<Integer>> options = new HashMap<>();
    private final int liked;
    private final Map<Integer, Boolean> allowed = new HashMap<>();
    private List<FormationView> formations;
    private boolean complete = true;

    /**
     * @param last whether no stage comes after this one: what may be had once in a campaign is kept for it
     * @param later how many pieces of each type will be needed in the end, and so cost nothing more
     */
    Larder(Brief brief, Guide guide, Lessons lessons, boolean last, Map<Id, Integer> later) {
        this.brief = brief;
        this.guide = guide;
        this.lessons = lessons;
        this.last = last;
        reckoner = new Reckoner(guide, brief.allowance(), later);
        Set<Id> likes = new LinkedHashSet<>();
        brief.wishes().stream().flatMap(wish -> wish.tastes().stream()).forEach(taste ->
                (taste.taste() == Taste.NEVER ? never : taste.taste() == Taste.FIRST ? first : likes).addAll(taste.what()));
        traits.addAll(likes.stream().limit(TRAITS).toList());
        liked = traits.size();
        traits.addAll(lessons.wanted().stream().limit(TRAITS).toList());
        lessons.options().forEach((name, counts) -> options.computeIfAbsent(name, key -> new TreeSet<>()).addAll(counts));
        brief.ruling().limits().stream().flatMap(limit -> limit.lines().stream()).filter(AlwaysView.class::isInstance)
                .forEach(line -> asked(((AlwaysView) line).formula().said()));
    }

    private void asked(Expression said) {
        if (said instanceof OptionsTaken taken) {
            taken.option().ifPresent(name -> options.computeIfAbsent(name, key -> new TreeSet<>()).add(1));
        }
        said.parts().forEach(this::asked);
    }

    /** Whether something may be taken: by the rules, the wishes, and what was learned. */
    boolean may(Choice choice) {
        return allowed.computeIfAbsent(choice.index(), key -> permitted(choice));
    }

    private boolean permitted(Choice choice) {
        return choice.permission().allowed() && !named(choice, never) && !lessons.leavesOut(choice)
                && (last || !once(choice)) && (choice.sides().isEmpty() || brief.situation().side().isEmpty()
                        || choice.sides().contains(brief.situation().side().get()))
                && (!(choice instanceof UnitView unit) || unit.priced());
    }

    private boolean once(Choice choice) {
        return brief.ruling().limits().stream().flatMap(limit -> limit.lines().stream()).anyMatch(line ->
                line instanceof BoundView bound && bound.bound().scope().reckoning() == Reckoning.CAMPAIGN
                        && bound.of().takes(choice.index()));
    }

    static boolean named(Choice choice, Set<Id> names) {
        return names.contains(choice.id()) || choice.kinds().stream().anyMatch(names::contains);
    }

    /** The formations that may stand by themselves. */
    List<FormationView> formations() {
        if (formations == null) {
            formations = brief.ruling().choices().stream().filter(FormationView.class::isInstance).filter(this::may)
                    .map(FormationView.class::cast).toList();
        }
        return formations;
    }

    /** The bit of what is wished for first. */
    long firstTrait() {
        return 1L << 62;
    }

    /** Whether anything is wished for first that may be taken. */
    boolean asksFirst() {
        return brief.ruling().choices().stream().anyMatch(choice -> may(choice) && named(choice, first));
    }

    /** The bits of what is liked. */
    long likedTraits() {
        return (1L << liked) - 1;
    }

    private long traits(Choice choice) {
        long bits = named(choice, first) ? firstTrait() : 0;
        for (int i = 0; i < traits.size(); i++) {
            bits |= named(choice, Set.of(traits.get(i))) ? 1L << i : 0;
        }
        return bits;
    }

    /** What may fill a place: units at their strengths, liked ones first, then those that cost least money. */
    List<Item> items(Selector of) {
        return choices.computeIfAbsent(of, this::fill);
    }

    private List<Item> fill(Selector of) {
        List<Item> fit = new ArrayList<>();
        List<List<Item>> units = new ArrayList<>();
        for (int index = of.nextChoice(0); index >= 0; index = of.nextChoice(index + 1)) {
            Choice choice = brief.ruling().choices().get(index);
            if (may(choice) && choice instanceof FormationView formation) {
                fit.add(formation(formation));
            } else if (may(choice) && choice instanceof UnitView unit) {
                units.add(items(unit));
            }
        }
        units.removeIf(List::isEmpty);
        units.sort(Comparator.comparingLong((List<Item> some) -> -Long.bitCount(some.get(0).traits()))
                .thenComparingLong(some -> some.stream().mapToLong(this::alone).min().orElse(0))
                .thenComparingInt(some -> some.get(0).choice().index()));
        complete &= units.size() <= UNITS;
        units.stream().limit(UNITS).forEach(fit::addAll);
        return fit;
    }

    private List<Item> items(UnitView unit) {
        Set<Integer> strengths = new TreeSet<>();
        for (Step step : unit.steps()) {
            complete &= step.to() - step.from() < 2;
            strengths.add(step.from());
            strengths.add(step.to());
        }
        List<Item> all = new ArrayList<>();
        for (int strength : strengths) {
            if (unit.step(strength) != null && unit.points(strength) <= brief.situation().points().orElseThrow()) {
                Item plain = item(Taking.of(unit, strength));
                all.add(plain);
                options(plain, all);
            }
        }
        return all;
    }

    /** With options that the rules ask for, and with those whose pieces are there. */
    private void options(Item plain, List<Item> into) {
        Variants variants = new Variants(plain.taking());
        variants.asked(options);
        complete &= variants.complete();
        if (guide != Guide.NONE) {
            variants.free(options.keySet(), (one, other) -> alone(item(other)) <= alone(item(one)));
        }
        variants.all().forEach(taking -> into.add(item(taking)));
    }

    /** A formation with nothing in it. */
    Item formation(FormationView formation) {
        return new Item(formation, null, formation.points(), new int[0], new int[0], traits(formation));
    }

    /** A unit as it is taken. */
    Item item(Taking taking) {
        return items.computeIfAbsent(taking.key(), key -> {
            Id name = brief.name().child("one");
            ForceList one = new ForceList(name, brief.situation().player(), OptionalInt.empty(), List.of(), Optional.empty(),
                    OptionalInt.empty(), new Body(List.of(), List.of(taking.entry(name.line(1), 1))), List.of(), List.of(),
                    List.of(), List.of());
            Map<Integer, Integer> needs = new LinkedHashMap<>();
            for (Requirement need : Requirements.of(brief.ruling(), one, Map.of())) {
                needs.merge(reckoner.slot(need.anyOf(), taking.unit().id()), need.count(), Integer::sum);
            }
            return new Item(taking.unit(), taking, taking.points(), ints(needs.keySet()), ints(needs.values()),
                    traits(taking.unit()));
        });
    }

    private static int[] ints(Collection<Integer> some) {
        return some.stream().mapToInt(Integer::intValue).toArray();
    }

    /** About what all of this costs beyond what is there. */
    long money(int[] have) {
        return reckoner.money(have);
    }

    private long alone(Item item) {
        return money(plus(new int[0], item));
    }

    /** Adds what something needs. */
    int[] plus(int[] have, Item item) {
        int length = have.length;
        for (int slot : item.slots()) {
            length = Math.max(length, slot + 1);
        }
        int[] more = Arrays.copyOf(have, length);
        for (int i = 0; i < item.slots().length; i++) {
            more[item.slots()[i]] += item.counts()[i];
        }
        return more;
    }

    /** Whether nothing was left out that could be taken. */
    boolean complete() {
        return complete;
    }
}
