package org.cantonment.buying.plan;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.turnout.Turnout;
import org.joda.money.Money;

/**
 * What to buy, what to build of it, and that it is enough.
 *
 * @param purchases in the order of stages, then of codes
 * @param orders what each seller is paid in each stage; their totals add up to the total
 * @param buildings the choices that last
 * @param alone for each target fielded what is built for it of parts that come loose between games, to be taken apart again
 * @param fielded the targets: all of the question but those of a choice that were not chosen
 * @param turnouts for each of them who stands where, with what is bought and built by then; each is complete
 * @param work what is built in each stage, what is rebuilt between games counted once
 * @param leftovers what is bought and stands nowhere
 * @param proven whether there is none that costs less
 * @param settled whether none that costs as much is preferred: it has fewer pieces, then fewer boxes, then earlier codes
 * @param bound nothing costs less
 */
public record Plan(List<Purchase> purchases, List<Order> orders, List<Building> buildings, List<List<Building>> alone,
        List<Conversions> conversions, List<Work> work, List<Target> fielded, List<Turnout> turnouts, List<Leftover> leftovers,
        Money total, boolean proven, boolean settled,
        Money bound) {

    public Plan {
        purchases = List.copyOf(purchases);
        orders = List.copyOf(orders);
        buildings = List.copyOf(buildings);
        alone = alone.stream().map(List::copyOf).toList();
        conversions = List.copyOf(conversions);
        work = List.copyOf(work);
        fielded = List.copyOf(fielded);
        turnouts = List.copyOf(turnouts);
        leftovers = List.copyOf(leftovers);
    }

    /** The same, with what is known of what it costs. */
    public Plan told(boolean isProven, boolean isSettled, Money nothingLess) {
        return new Plan(purchases, orders, buildings, alone, conversions, work, fielded, turnouts, leftovers, total,
                isProven, isSettled, nothingLess);
    }

    /** How much less there could be at the most. */
    public Money gap() {
        return total.minus(bound);
    }

    /** How many pieces and parts are left over. */
    public int left() {
        return leftovers.stream().mapToInt(Leftover::count).sum();
    }

    /** What is built in all stages together. */
    public Work allWork() {
        return work.stream().reduce(Work.NONE, Work::plus);
    }

    /** How many of each box are bought in all. */
    public Map<Id, Integer> boxes() {
        Map<Id, Integer> boxes = new TreeMap<>();
        purchases.forEach(one -> boxes.merge(one.ware().box(), one.count() * one.ware().boxes(), Integer::sum));
        return boxes;
    }

    /** What is paid in a stage. */
    public Money paid(int stage) {
        return orders.stream().filter(order -> order.stage() == stage).map(Order::total)
                .reduce(Money.zero(total.getCurrencyUnit()), Money::plus);
    }
}
