package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.shopping.GrowAnswer;
import org.cantonment.desk.shopping.GrowText;
import org.cantonment.desk.shopping.Growing;
import org.cantonment.desk.shopping.Growing.Terms;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.campaign.Player;

/** {@code grow PLAYER [FOLDER]}: what to buy before which round. */
final class GrowCommand {
    private final Terminal terminal;
    private final Call call;
    private final ShoppingCall shopping;

    GrowCommand(Terminal terminal, Call call) {
        this.terminal = terminal;
        this.call = call;
        this.shopping = new ShoppingCall(terminal, call);
    }

    int run() {
        List<String> budgets = shopping.several("--budgets").stream().map(Plain::line).toList();
        if (call.has("--saved") && budgets.isEmpty()) {
            throw new WrongCall("'--saved' is said of '--budgets'; what the books say of money, they say themselves.");
        }
        int least = Numbers.from(call, "--least", 0).orElse(Terms.HALF);
        if (least > 100) {
            throw new WrongCall("'--least' is a percentage of the limit, from 0 to 100.");
        }
        Terms terms = new Terms(shopping.several("--rounds").stream().map(Plain::line).toList(), budgets, call.has("--saved"),
                call.has("--compose"), least, call.value("--bench").map(Plain::line));
        Optional<Path> lists = call.value("--write").map(new Paths(terminal)::folder);
        return ShoppingCall.telling(() -> ask(terms, lists));
    }

    private int ask(Terms terms, Optional<Path> lists) throws Unclear {
        Player player = shopping.player(call.paths().get(0));
        Shops shops = Shops.of(shopping.meanings(), Optional.of(player.id()), shopping.errand());
        try (Stopping stopping = Stopping.after(Numbers.from(call, "--seconds", 0))) {
            GrowAnswer answer = Growing.of(shopping.meanings(), player, terms, shops, stopping, new SlowProgress(terminal));
            GrowText text = new GrowText(answer);
            shopping.answer(text.lines(), text.reply(), () -> new GrowJson(answer).write());
            boolean written = lists.isEmpty() || new ListFiles(terminal, lists.get()).write(answer, player);
            return answer.complete() && written ? Exit.FINE : Exit.BREACH;
        }
    }
}
