package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.shelf.BenchTime;
import org.cantonment.domain.shelf.Taste;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.domain.shelf.WishBudget;
import org.cantonment.domain.shelf.WishFor;
import org.cantonment.model.book.Line;
import org.cantonment.model.shelf.ShelfPackage;
import org.cantonment.model.shelf.WishBench;
import org.cantonment.model.shelf.WishRounds;
import org.cantonment.model.shelf.WishSpare;
import org.cantonment.notation.reading.Under.Taken;

/** Reads one wish of a player. */
final class WishReader {

    private final Reading reading;
    private final Phrases phrases;
    private final org.cantonment.model.shelf.Wish wish;
    private final List<WishFor> tastes = new ArrayList<>();
    private final List<WishBudget> budgets = new ArrayList<>();
    private final List<InRounds> rounds = new ArrayList<>();
    private final Said<Integer> spares;
    private final Said<org.cantonment.domain.shelf.WishBench> bench;

    WishReader(Reading reading, Phrases phrases, org.cantonment.model.shelf.Wish wish) {
        this.reading = reading;
        this.phrases = phrases;
        this.wish = wish;
        spares = new Said<>(reading);
        bench = new Said<>(reading);
    }

    Wish read() {
        Id id = reading.id(wish);
        Under.each(reading, id, wish.getLines(), Under.words("wish", wish), this::take);
        return new Wish(id, Reading.label(wish), tastes, budgets, bench.value(), rounds, Said.number(spares),
                Reading.notes(wish.getLines()));
    }

    private Taken take(Line line, Id id) {
        if (line instanceof org.cantonment.model.shelf.WishFor taste) {
            List<Id> what = Reading.refs(taste.getWhat());
            if (!what.isEmpty()) {
                Words.of(Taste.class, taste.getAct()).ifPresent(act -> tastes.add(new WishFor(id, act, what)));
            }
        } else if (line instanceof org.cantonment.model.shelf.WishBudget budget) {
            phrases.money(budget.getMoney()).ifPresent(
                    money -> budgets.add(new WishBudget(id, money, budget.isPerRound(), budget.isSaved())));
        } else if (line instanceof WishRounds some) {
            rounds(some).ifPresent(rounds::add);
        } else if (line instanceof WishBench some) {
            bench.say(some, time(some).map(time -> new org.cantonment.domain.shelf.WishBench(id, time)));
        } else if (line instanceof WishSpare spare) {
            spares.say(spare, Optional.ofNullable(spare.getPercent()).map(
                    percent -> reading.percent(spare, ShelfPackage.Literals.WISH_SPARE__PERCENT, percent)));
        } else {
            return Taken.NO;
        }
        return Taken.ALONE;
    }

    /** A half-typed line says nothing. */
    private Optional<BenchTime> time(WishBench some) {
        if (!some.isPerRound() && !some.isPerWeek()) {
            return Optional.empty();
        }
        boolean parts = some.getParts() != null;
        OptionalInt most = parts ? phrases.within(some, ShelfPackage.Literals.WISH_BENCH__PARTS, some.getParts(), 0)
                : phrases.minutes(some.getDuration(), 0);
        return most.isEmpty() ? Optional.empty() : Optional.of(new BenchTime(most.getAsInt(),
                parts ? BenchTime.Measure.PARTS : BenchTime.Measure.MINUTES, some.isPerWeek()));
    }

    private Optional<InRounds> rounds(WishRounds some) {
        if (some.getFirst() == null) {
            return Optional.empty();
        }
        int first = reading.atLeastOne(some, ShelfPackage.Literals.WISH_ROUNDS__FIRST, some.getFirst());
        return Optional.of(phrases.rounds(some, ShelfPackage.Literals.WISH_ROUNDS__LAST, first, some.getLast()));
    }
}
