package org.cantonment.desk.cli;

import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.desk.shopping.BuyAnswer;
import org.cantonment.desk.shopping.BuyText;
import org.cantonment.desk.shopping.Shopper;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.campaign.Player;

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
        Shopper shopper = shopping.shopper(player, shops);
        try (Stopping stopping = Stopping.after(Numbers.from(call, "--seconds", 0))) {
            BuyAnswer answer = BuyAnswer.of(shopper, shops, shopping.money("--budget", shops), next,
                    shopping.money("--within", shops), stopping, new SlowProgress(terminal));
            BuyText text = new BuyText(answer);
            shopping.answer(text.lines(), text.reply(), () -> new BuyJson(answer).write());
            return answer.complete() ? Exit.FINE : Exit.BREACH;
        }
    }
}
