package org.cantonment.desk.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.desk.shopping.BuyAnswer;
import org.cantonment.desk.shopping.BuyText;
import org.cantonment.desk.shopping.Shopper;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Id;

/** {@code buy PLAYER [FOLDER]}: what to buy so that lists can be fielded, at least cost. */
final class BuyCommand {
    private static final int MOST_NEXT = 9;

    private final Terminal terminal;
    private final Call call;
    private final ShoppingCall shopping;

    BuyCommand(Terminal terminal, Call call) {
        this.terminal = terminal;
        this.call = call;
        this.shopping = new ShoppingCall(terminal, call);
    }

    int run() {
        OptionalInt next = Numbers.from(call, "--next", 0);
        if (next.orElse(0) > MOST_NEXT) {
            throw new WrongCall("'--next' tells at most " + MOST_NEXT + " plans more.");
        }
        return ShoppingCall.telling(() -> ask(next.orElse(0)));
    }

    private int ask(int next) throws Unclear {
        Player player = shopping.player(call.paths().get(0));
        Shops shops = Shops.of(shopping.meanings(), Optional.of(player.id()), shopping.errand());
        Shopper shopper = together(shopping.shopper(player, shops), player, shops);
        try (Stopping stopping = Stopping.after(Numbers.from(call, "--seconds", 0))) {
            BuyAnswer answer = BuyAnswer.of(shopper, shops, shopping.money("--budget", shops), next,
                    shopping.money("--within", shops), stopping, new SlowProgress(terminal));
            BuyText text = new BuyText(answer);
            shopping.answer(text.lines(), text.reply(), () -> new BuyJson(answer).write());
            return answer.complete() ? Exit.FINE : Exit.BREACH;
        }
    }

    private Shopper together(Shopper first, Player player, Shops shops) throws Unclear {
        List<Shopper> others = new ArrayList<>();
        Set<Id> had = new HashSet<>(Set.of(player.id()));
        for (String word : shopping.several("--together")) {
            Player other = shopping.player(word);
            if (!had.add(other.id())) {
                throw new WrongCall("'" + word + "' is named twice.");
            }
            others.add(shopping.shopper(other, shops));
        }
        if (!others.isEmpty() && !shopping.errand().also().isEmpty()) {
            throw new WrongCall("'--also' is asked for one player; it cannot be told whose it is in an order together.");
        }
        return others.isEmpty() ? first : first.with(others, shopping.meanings());
    }
}
