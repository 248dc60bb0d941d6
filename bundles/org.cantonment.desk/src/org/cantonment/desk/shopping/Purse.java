package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.RoundBudget;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.domain.shelf.WishBudget;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What may be spent before each round.
 *
 * @param budgets one for each round; empty for no end of money
 * @param saved   whether what is left may be spent later
 * @param why     who says so, in words
 */
record Purse(List<Optional<Money>> budgets, boolean saved, String why) {
    Purse {
        budgets = List.copyOf(budgets);
    }

    /**
     * As asked for: one amount for each round, or one for all.
     *
     * @throws Unclear if there are neither one nor as many as rounds
     */
    static Purse asked(List<Money> amounts, boolean saved, int rounds) throws Unclear {
        if (amounts.size() != 1 && amounts.size() != rounds) {
            throw new Unclear("There are " + amounts.size() + " budgets for " + rounds
                    + " rounds; write one for each round, or one that each of them has.");
        }
        List<Optional<Money>> budgets = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            budgets.add(Optional.of(amounts.get(amounts.size() == 1 ? 0 : i)));
        }
        return new Purse(budgets, saved, "as asked");
    }

    /** As the rounds say; where none of them says anything, as the player wishes. Other currencies than this are passed over. */
    static Purse written(List<Round> rounds, List<Wish> wishes, CurrencyUnit currency) {
        List<Optional<RoundBudget>> said = rounds.stream().map(Round::budget).map(one -> one.filter(budget ->
                budget.money().getCurrencyUnit().equals(currency))).toList();
        if (said.stream().anyMatch(Optional::isPresent)) {
            return new Purse(said.stream().map(one -> one.map(RoundBudget::money)).toList(),
                    said.stream().flatMap(Optional::stream).anyMatch(RoundBudget::saved), "as the campaign says");
        }
        Optional<WishBudget> wished = wishes.stream().flatMap(wish -> wish.budgets().stream())
                .filter(budget -> budget.money().getCurrencyUnit().equals(currency)).findFirst();
        if (wished.isEmpty()) {
            return new Purse(rounds.stream().map(round -> Optional.<Money>empty()).toList(), false, "no end of money");
        }
        WishBudget budget = wished.get();
        List<Optional<Money>> budgets = new ArrayList<>();
        for (int i = 0; i < rounds.size(); i++) {
            budgets.add(Optional.of(budget.perRound() || i == 0 ? budget.money() : Money.zero(currency)));
        }
        return new Purse(budgets, budget.saved() || !budget.perRound(), "as the player wishes");
    }
}
