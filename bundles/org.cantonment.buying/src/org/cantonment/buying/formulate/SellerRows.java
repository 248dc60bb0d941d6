package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.market.Terms;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/** What one seller asks and grants for one order: an order is sent for money or free, and gets one discount at most. */
final class SellerRows {

    private final Terms terms;
    private final int stage;
    private final ProgrammeMaker maker;
    private final Sum ownGoods = new Sum();
    private final Sum goods = new Sum();
    private long mostGoods;
    private final int paid;
    private final int free;
    private final List<Integer> off = new ArrayList<>();

    SellerRows(Terms terms, int stage, ProgrammeMaker maker) {
        this.terms = terms;
        this.stage = stage;
        this.maker = maker;
        String order = terms.seller() + " in " + stage;
        long sending = terms.postage().map(Money::getAmountMinorLong).orElse(0L);
        paid = sending > 0 ? maker.column("sending by " + order, sending, 0, 1, 0) : Formulation.NONE;
        free = sending > 0 && terms.freeFrom().isPresent() ? maker.column("free sending by " + order, 0, 0, 1, 0)
                : Formulation.NONE;
    }

    int stage() {
        return stage;
    }

    /**
     * How many of a ware could be bought only to reach one of the seller's thresholds. One less must miss a threshold, so the
     * goods go no further beyond it than one costs; and all of them together cost no more than what is gained: the postage and
     * the greatest discount.
     *
     * @param dearest of each seller, as {@link #dearest} tells
     */
    static long reach(Terms terms, Ware ware, Map<Id, Ware> dearest) {
        long most = terms == null ? 0 : threshold(terms);
        long price = ware.price().getAmountMinorLong();
        long cost = ware.cost().getAmountMinorLong();
        if (most == 0 || price == 0) {
            return 0;
        }
        long gained = terms.freeFrom().isEmpty() ? 0 : terms.postage().map(Money::getAmountMinorLong).orElse(0L);
        int percent = terms.discounts().stream().mapToInt(Terms.Reduction::percent).max().orElse(0);
        Ware other = dearest.get(terms.seller());
        long goods = ceil(Math.multiplyExact(other.cost().getAmountMinorLong(), most + price),
                other.price().getAmountMinorLong());
        long reached = ceil(most, price);
        return cost == 0 ? reached : Math.min(reached, (gained + goods * percent / 100) / cost);
    }

    /** Of each seller the ware that costs most for what it adds to the goods; rounding makes a difference in other currencies. */
    static Map<Id, Ware> dearest(List<Ware> wares) {
        Map<Id, Ware> dearest = new HashMap<>();
        wares.stream().filter(ware -> ware.price().isPositive())
                .forEach(ware -> dearest.merge(ware.seller(), ware, (one, other) -> dearer(other, one) ? other : one));
        return dearest;
    }

    private static boolean dearer(Ware one, Ware other) {
        return Math.multiplyExact(one.cost().getAmountMinorLong(), other.price().getAmountMinorLong())
                > Math.multiplyExact(other.cost().getAmountMinorLong(), one.price().getAmountMinorLong());
    }

    /** The goods from which the most is granted; 0 if it does not matter how much is ordered at once. */
    private static long threshold(Terms terms) {
        long most = terms.postage().flatMap(postage -> terms.freeFrom()).map(Money::getAmountMinorLong).orElse(0L);
        for (Terms.Reduction one : terms.discounts()) {
            most = Math.max(most, one.from().map(Money::getAmountMinorLong).orElse(0L));
        }
        return most;
    }

    private static long ceil(long number, long by) {
        return (number + by - 1) / by;
    }

    void ware(Ware ware, int column, long most) {
        ownGoods.add(ware.price().getAmountMinorLong(), column);
        goods.add(ware.cost().getAmountMinorLong(), column);
        mostGoods += ware.cost().getAmountMinorLong() * most;
        if (paid != Formulation.NONE) {
            Sum sent = new Sum().add(most, paid).add(-1, column);
            maker.atLeast(free == Formulation.NONE ? sent : sent.add(most, free), 0);
        }
    }

    /** Adds what the order costs beside the goods. */
    void finish(Sum spent) {
        if (paid != Formulation.NONE) {
            spent.add(terms.postage().get().getAmountMinorLong(), paid);
        }
        if (free != Formulation.NONE) {
            maker.atLeast(new Sum().add(1, ownGoods).add(-terms.freeFrom().get().getAmountMinorLong(), free), 0);
        }
        Sum one = new Sum();
        boolean several = terms.discounts().size() > 1;
        for (Terms.Reduction discount : terms.discounts()) {
            long most = mostGoods * discount.percent() / 100;
            int reduced = maker.column("off by " + discount.line() + " in " + stage, -1, 0, most, 3);
            off.add(reduced);
            spent.add(-1, reduced);
            maker.atLeast(new Sum().add(discount.percent(), goods).add(-100, reduced), 0);
            if (several || discount.from().isPresent()) {
                int given = maker.column("discount " + discount.line() + " in " + stage, 0, 0, 1, 0);
                one.add(1, given);
                maker.atLeast(new Sum().add(most, given).add(-1, reduced), 0);
                discount.from().ifPresent(from -> maker.atLeast(
                        new Sum().add(1, ownGoods).add(-from.getAmountMinorLong(), given), 0));
            }
        }
        if (several) {
            maker.atMost(one, 1);
        }
    }

    long sending(long[] values) {
        return paid != Formulation.NONE ? values[paid] * terms.postage().get().getAmountMinorLong() : 0;
    }

    long off(long[] values) {
        return off.stream().mapToLong(column -> values[column]).sum();
    }
}
