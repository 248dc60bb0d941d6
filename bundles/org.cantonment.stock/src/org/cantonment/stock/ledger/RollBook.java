package org.cantonment.stock.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Fund;
import org.cantonment.domain.campaign.Funded;
import org.cantonment.domain.campaign.Game;
import org.cantonment.domain.campaign.MoveVerb;
import org.cantonment.domain.campaign.Moved;
import org.cantonment.domain.campaign.Outcome;
import org.cantonment.domain.campaign.Pays;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.campaign.Wounds;
import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.domain.shelf.Held;

/**
 * The other book of a season: what games cost the armies, what came back, and what is in the funds. Of what a game
 * destroys, the campaign's share is wounded and misses the rounds it says; the rest is lost until it is rebuilt.
 */
public final class RollBook {

    /** The code of a deed that brings back more than was out. */
    static final String NOT_OUT = "roll.not-out";

    private static final int HUNDRED = 100;

    private record Hurt(int count, int backFor) {
    }

    private final Optional<Campaign> campaign;
    private final List<Week> weeks;
    private final Calendar calendar;

    private RollBook(Optional<Campaign> campaign, Collection<Week> weeks) {
        this.campaign = campaign;
        this.weeks = new ArrayList<>(weeks);
        campaign.ifPresent(one -> this.weeks.addAll(one.weeks()));
        calendar = new Calendar(campaign);
    }

    /** The rolls of a season. */
    public static RollBook of(Optional<Campaign> campaign, Collection<Week> weeks) {
        return new RollBook(campaign, weeks);
    }

    /**
     * A player's roll for a round.
     *
     * @param round the round that is to be played; without one, nobody who is wounded is back
     */
    public Roll of(Id player, OptionalInt round, AsOf asOf) {
        Reckoning reckoning = new Reckoning(player, round);
        List<Entry> entries = new Known(calendar, weeks, asOf).entries();
        List<Entry> hers = entries.stream().filter(entry -> asOf.day().isEmpty() || !calendar.dated()
                || !entry.day().isAfter(asOf.day().get())).toList();
        // Losses first: what a day brings back was out by then, in whatever order the lines stand.
        hers.forEach(reckoning::lose);
        hers.forEach(reckoning::comeBack);
        hers.forEach(reckoning::pay);
        return reckoning.roll();
    }

    private final class Reckoning {

        private final Id player;
        private final OptionalInt round;
        private final Map<Id, Integer> lost = new TreeMap<>();
        private final Map<Id, List<Hurt>> hurt = new TreeMap<>();
        private final Map<Id, Integer> funds = new TreeMap<>();
        private final List<Finding> findings = new ArrayList<>();

        Reckoning(Id player, OptionalInt round) {
            this.player = player;
            this.round = round;
            campaign.ifPresent(one -> one.funds().forEach(fund -> funds.put(fund.id(), fund.start())));
        }

        private boolean hers(Entry entry, MoveVerb verb) {
            return entry.deed().who().equals(player) && entry.deed().doing() instanceof Moved moved && moved.verb() == verb;
        }

        void lose(Entry entry) {
            OptionalInt of = calendar.round(entry.day(), Known.clauses(entry));
            if (hers(entry, MoveVerb.LOST) && !(round.isPresent() && of.isPresent() && of.getAsInt() >= round.getAsInt())) {
                ((Moved) entry.deed().doing()).things().forEach(held -> destroy(held, entry.game() != null, of, entry.day()));
            } else if (hers(entry, MoveVerb.MISSED)) {
                ((Moved) entry.deed().doing()).things().forEach(held -> hurt(held.what(), held.count(), of, 1));
            }
        }

        private void destroy(Held held, boolean inGame, OptionalInt of, LocalDate day) {
            Optional<Wounds> rule = inGame ? wounds(of, day) : Optional.empty();
            int wounded = rule.map(one -> share(held.count(), one)).orElse(0);
            if (wounded > 0) {
                hurt(held.what(), wounded, of, rule.get().rounds());
            }
            lost.merge(held.what(), held.count() - wounded, Integer::sum);
        }

        private void hurt(Id what, int count, OptionalInt of, int rounds) {
            int back = of.isPresent() ? of.getAsInt() + rounds + 1 : Integer.MAX_VALUE;
            if (round.isEmpty() || back > round.getAsInt()) {
                hurt.computeIfAbsent(what, type -> new ArrayList<>()).add(new Hurt(count, back));
            }
        }

        void comeBack(Entry entry) {
            boolean any = hers(entry, MoveVerb.RECOVERED) || hers(entry, MoveVerb.MENDED);
            if (any || hers(entry, MoveVerb.REBUILT)) {
                for (Held held : ((Moved) entry.deed().doing()).things()) {
                    int left = held.count() - (any ? heal(held.what(), held.count()) : 0);
                    int back = Math.min(left, lost.getOrDefault(held.what(), 0));
                    lost.merge(held.what(), -back, Integer::sum);
                    if (left > back) {
                        findings.add(Finding.of(NOT_OUT, Severity.CAUTION, entry.deed().id(), "So many of "
                                + held.what().name() + " are not out: " + (held.count() - left + back) + " can come back, and "
                                + held.count() + " are written. Only those are booked."));
                    }
                }
            }
        }

        private int heal(Id what, int count) {
            List<Hurt> all = hurt.getOrDefault(what, new ArrayList<>());
            int left = count;
            for (int i = 0; i < all.size() && left > 0; i++) {
                int some = Math.min(left, all.get(i).count());
                all.set(i, new Hurt(all.get(i).count() - some, all.get(i).backFor()));
                left -= some;
            }
            return count - left;
        }

        void pay(Entry entry) {
            if (entry.deed().who().equals(player) && entry.deed().doing() instanceof Funded funded) {
                funds.merge(funded.fund(), funded.earned() ? funded.amount() : -funded.amount(), Integer::sum);
            }
            if (entry.deed().doing() instanceof Game game
                    && (entry.deed().who().equals(player) || game.other().equals(player))) {
                Outcome outcome = game.drawn() ? Outcome.DRAW
                        : entry.deed().who().equals(player) ? Outcome.VICTORY : Outcome.DEFEAT;
                Occasion occasion = occasion(calendar.round(entry.day(), entry.deed().clauses()), entry.day());
                for (Pays pays : pays()) {
                    boolean due = pays.outcome().isEmpty() || pays.outcome().get() == Outcome.EITHER
                            || pays.outcome().get() == outcome;
                    if (due && pays.when().covers(occasion, EraOrder.NONE)) {
                        funds.merge(pays.fund(), pays.amount(), Integer::sum);
                    }
                }
            }
        }

        Roll roll() {
            Map<Id, Roll.Out> out = new TreeMap<>();
            lost.forEach((what, count) -> out.put(what, new Roll.Out(count, 0)));
            hurt.forEach((what, all) -> out.merge(what, new Roll.Out(0, all.stream().mapToInt(Hurt::count).sum()),
                    (a, b) -> new Roll.Out(a.lost() + b.lost(), a.wounded() + b.wounded())));
            out.values().removeIf(one -> one.all() == 0);
            return new Roll(out, funds, findings);
        }
    }

    private List<Pays> pays() {
        List<Pays> all = new ArrayList<>();
        campaign.ifPresent(one -> {
            one.casualties().forEach(card -> all.addAll(card.pays()));
            one.funds().stream().map(Fund::pays).forEach(all::addAll);
        });
        return all;
    }

    private Optional<Wounds> wounds(OptionalInt round, LocalDate day) {
        Occasion occasion = occasion(round, day);
        return campaign.stream().flatMap(one -> one.casualties().stream())
                .filter(card -> card.when().covers(occasion, EraOrder.NONE)).flatMap(card -> card.wounds().stream())
                .filter(one -> one.when().covers(occasion, EraOrder.NONE)).findFirst();
    }

    private static Occasion occasion(OptionalInt round, LocalDate day) {
        return new Occasion(Optional.empty(), round, OptionalInt.empty(), Optional.of(day));
    }

    /** Exact where nothing is said of rounding: whole pieces only, so it is rounded down. */
    private static int share(int count, Wounds rule) {
        long hundredths = (long) count * rule.percent();
        return (int) (rule.rounding() == Rounding.UP ? (hundredths + HUNDRED - 1) / HUNDRED : hundredths / HUNDRED);
    }
}
