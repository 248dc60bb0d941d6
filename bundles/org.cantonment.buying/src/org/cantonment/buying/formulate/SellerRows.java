package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.market.Terms;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
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

    /** How many of a ware could be bought only to reach one of the seller's thresholds. */
    static long reach(Terms terms, Ware ware, List<Ware> wares) {
        if (terms == null) {
            return 0;
        }
        long price = ware.price().getAmountMinorLong();
        long most = 0;
        if (terms.postage().isPresent() && terms.freeFrom().isPresent()
                && ware.cost().compareTo(terms.postage().get()) <= 0) {
            most = reach(terms.freeFrom(), price);
        }
        for (Terms.Reduction one : terms.discounts()) {
            most = Math.max(most, one.from().isEmpty() ? 0 : reach(one.from(), price));
        }
        return most;
    }

    private static long reach(Optional<Money> threshold, long price) {
        long goods = threshold.get().getAmountMinorLong();
        return price <= 0 ? 1 : (goods + price - 1) / price;
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
