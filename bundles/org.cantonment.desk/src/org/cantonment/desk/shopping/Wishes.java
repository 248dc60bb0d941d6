package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Taste;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.domain.shelf.WishFor;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Ruling;

/** What a player wishes of lists that are composed, round by round. */
final class Wishes {
    private final List<Wish> all;

    Wishes(List<Wish> all) {
        this.all = all;
    }

    List<Wish> all() {
        return all;
    }

    /** Whether anything is liked or wished for first. */
    boolean likes() {
        return all.stream().flatMap(wish -> wish.tastes().stream()).anyMatch(taste -> taste.taste() != Taste.NEVER);
    }

    /** Those that hold in a round: a wish without rounds holds in all. */
    List<Wish> in(int round) {
        return all.stream().filter(wish -> wish.rounds().isEmpty() || wish.rounds().stream()
                .anyMatch(span -> span.first() <= round && round <= span.last())).toList();
    }

    /** The same, but only what is never wanted. */
    Wishes plain() {
        return new Wishes(all.stream().map(wish -> new Wish(wish.id(), wish.label(), wish.tastes().stream()
                .filter(taste -> taste.taste() == Taste.NEVER).toList(), wish.budgets(), wish.bench(), wish.rounds(),
                OptionalInt.empty(),
                wish.notes())).toList());
    }

    /** What cannot be as it is wished, in whole sentences; of rounds whose lists are composed. */
    List<String> remarks(List<Turn> turns) {
        Map<String, Set<Integer>> where = new LinkedHashMap<>();
        for (Turn turn : turns) {
            if (turn.written().isEmpty() && turn.about().ruling().isPresent()) {
                int number = turn.round().number();
                Ruling ruling = turn.about().ruling().get();
                Set<Id> never = named(number, Taste.NEVER);
                for (Id wanted : wanted(number)) {
                    why(wanted, never, ruling, turn).forEach(words -> where.computeIfAbsent(words, key -> new TreeSet<>())
                            .add(number));
                }
            }
        }
        List<String> remarks = new ArrayList<>();
        where.forEach((words, rounds) -> remarks.add(words + " (" + (rounds.size() == 1 ? "round " : "rounds ")
                + PlanText.and(rounds.stream().map(String::valueOf).toList()) + ")."));
        return remarks;
    }

    private Set<Id> named(int round, Taste taste) {
        Set<Id> named = new TreeSet<>();
        in(round).forEach(wish -> wish.tastes().stream().filter(one -> one.taste() == taste).map(WishFor::what)
                .forEach(named::addAll));
        return named;
    }

    private Set<Id> wanted(int round) {
        Set<Id> wanted = named(round, Taste.FIRST);
        wanted.addAll(named(round, Taste.LIKES));
        return wanted;
    }

    private static List<String> why(Id wanted, Set<Id> never, Ruling ruling, Turn turn) {
        String title = ruling.title(wanted);
        if (never.contains(wanted)) {
            return List.of(title + " is wished for and never wanted; 'never' holds");
        }
        Map<Id, Choice> meant = new TreeMap<>();
        ruling.choices().stream().filter(one -> one.id().equals(wanted) || one.kinds().contains(wanted))
                .forEach(one -> meant.put(one.id(), one));
        if (meant.isEmpty()) {
            return List.of("The rules know nobody called " + title + ", which is wished for");
        }
        if (meant.values().stream().noneMatch(one -> one.permission().allowed())) {
            Choice one = meant.values().iterator().next();
            return List.of(meant.size() == 1 ? title + ", which is wished for, " + one.permission().reason()
                    : "Nobody of " + title + ", which is wished for, may be taken");
        }
        return turn.about().situation().side().isPresent() && meant.values().stream().allMatch(one -> !one.sides().isEmpty()
                && !one.sides().contains(turn.about().situation().side().get()))
                        ? List.of(title + ", which is wished for, belongs to another side") : List.of();
    }
}
