package org.cantonment.buying.plan;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.buying.market.Terms;
import org.cantonment.domain.common.Id;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Adds up orders from prices and terms, as a seller would: on paper, without the programme. */
final class Receipts {

    private final Question question;
    private final CurrencyUnit currency;

    Receipts(Question question, CurrencyUnit currency) {
        this.question = question;
        this.currency = currency;
    }

    List<Order> orders(List<Purchase> purchases) {
        List<Order> orders = new ArrayList<>();
        for (int stage = 0; stage < question.stages().size(); stage++) {
            Map<Id, List<Purchase>> bySeller = new TreeMap<>();
            for (Purchase one : purchases) {
                if (one.stage() == stage && one.count() > 0) {
                    bySeller.computeIfAbsent(one.ware().seller(), id -> new ArrayList<>()).add(one);
                }
            }
            for (Map.Entry<Id, List<Purchase>> order : bySeller.entrySet()) {
                orders.add(order(question.market().terms().get(order.getKey()), stage, order.getValue()));
            }
        }
        return orders;
    }

    private Order order(Terms terms, int stage, List<Purchase> purchases) {
        Money goods = Money.zero(currency);
        Money own = Money.zero(purchases.get(0).ware().price().getCurrencyUnit());
        for (Purchase one : purchases) {
            goods = goods.plus(one.sum());
            if (one.ware().price().getCurrencyUnit().equals(own.getCurrencyUnit())) {
                own = own.plus(one.ware().price().multipliedBy(one.count()));
            }
        }
        return new Order(terms.seller(), terms.title(), stage, goods, sending(terms, own), off(terms, goods, own));
    }

    private Money sending(Terms terms, Money own) {
        boolean free = reaches(own, terms.freeFrom()) && terms.freeFrom().isPresent();
        return free ? Money.zero(currency) : terms.postage().orElse(Money.zero(currency));
    }

    private Money off(Terms terms, Money goods, Money own) {
        Money most = Money.zero(currency);
        for (Terms.Reduction discount : terms.discounts()) {
            Money off = goods.multipliedBy(discount.percent()).dividedBy(100, RoundingMode.DOWN);
            if (reaches(own, discount.from()) && off.isGreaterThan(most)) {
                most = off;
            }
        }
        return most;
    }

    private static boolean reaches(Money own, Optional<Money> from) {
        return from.isEmpty() || from.get().getCurrencyUnit().equals(own.getCurrencyUnit()) && !own.isLessThan(from.get());
    }
}
