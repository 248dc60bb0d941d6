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
    /** Nobody says what may be spent. */
    static final String ENDLESS = "no end of money";

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

    /**
     * As each round says, else as the player wishes. Amounts in other currencies than this are passed over.
     *
     * @param rounds in their order
     */
    static Purse written(List<Round> rounds, List<Wish> wishes, CurrencyUnit currency) {
        Optional<WishBudget> wished = wishes.stream().flatMap(wish -> wish.budgets().stream())
                .filter(budget -> budget.money().getCurrencyUnit().equals(currency)).findFirst();
        List<Optional<Money>> budgets = new ArrayList<>();
        boolean saved = wished.filter(budget -> budget.saved() || !budget.perRound()).isPresent();
        boolean said = false;
        for (int i = 0; i < rounds.size(); i++) {
            Optional<RoundBudget> budget = rounds.get(i).budget().filter(one ->
                    one.money().getCurrencyUnit().equals(currency));
            boolean first = i == 0;
            budgets.add(budget.map(RoundBudget::money).or(() -> wished.map(one -> one.perRound() || first ? one.money()
                    : Money.zero(currency))));
            said |= budget.isPresent();
            saved |= budget.filter(RoundBudget::saved).isPresent();
        }
        return new Purse(budgets, saved, wished.isPresent() ? said ? "as the campaign says, else as the player wishes"
                : "as the player wishes" : said ? "as the campaign says" : ENDLESS);
    }
}
