package org.cantonment.desk.cli;

import java.util.Optional;

import org.cantonment.desk.shopping.Names;
import org.cantonment.desk.shopping.Shopper;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.desk.shopping.WorthAnswer;
import org.cantonment.desk.shopping.WorthText;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Id;

/** {@code worth BOX [FOLDER]}: what a box is worth, against single boxes and to a player. */
final class WorthCommand {
    private final Terminal terminal;
    private final Call call;
    private final ShoppingCall shopping;

    WorthCommand(Terminal terminal, Call call) {
        this.terminal = terminal;
        this.call = call;
        this.shopping = new ShoppingCall(terminal, call);
    }

    int run() {
        if (call.value("--for").isEmpty() && (call.value("--lists").isPresent() || call.value("--also").isPresent())) {
            throw new WrongCall("'--lists' and '--also' say what somebody wants: say with '--for' who.");
        }
        return ShoppingCall.telling(this::ask);
    }

    private int ask() throws Unclear {
        Optional<Player> player = call.value("--for").isEmpty() ? Optional.empty()
                : Optional.of(shopping.player(call.value("--for").get()));
        Id box = new Names(shopping.meanings()).box(Plain.line(call.paths().get(0)));
        Shops shops = Shops.of(shopping.meanings(), player.map(Player::id), shopping.errand());
        Optional<Shopper> shopper = player.isEmpty() ? Optional.empty() : Optional.of(shopping.shopper(player.get(), shops));
        try (Stopping stopping = Stopping.after(Numbers.from(call, "--seconds", 0))) {
            WorthAnswer answer = WorthAnswer.of(box, shops, shopper, stopping, new SlowProgress(terminal));
            WorthText text = new WorthText(answer);
            shopping.answer(text.lines(), text.reply(), () -> new WorthJson(answer).write());
            return answer.complete() ? Exit.FINE : Exit.BREACH;
        }
    }
}
