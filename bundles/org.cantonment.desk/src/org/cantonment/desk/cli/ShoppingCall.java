package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.shopping.Cash;
import org.cantonment.desk.shopping.Errand;
import org.cantonment.desk.shopping.Names;
import org.cantonment.desk.shopping.Shopper;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.force.ForceList;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** What the commands about buying have in common: their options, the folder, the answer's form. */
final class ShoppingCall {
    private final Terminal terminal;
    private final Call call;
    private final Errand errand;
    private DeskSnapshot snapshot;

    ShoppingCall(Terminal terminal, Call call) {
        this.terminal = terminal;
        this.call = call;
        if (call.has("--json") && call.has("--reply")) {
            throw new WrongCall("'--json' and '--reply' are two ways to answer; take one.");
        }
        errand = new Errand(several("--lists"), several("--also"), several("--from"), call.value("--on").map(Days::read),
                call.value("--in").map(ShoppingCall::currency));
    }

    /** Puts a question; what is wrong with it is told as a wrong call. */
    interface Asking {
        int run() throws Unclear;
    }

    static int telling(Asking asking) {
        try {
            return asking.run();
        } catch (Unclear e) {
            throw new WrongCall(e.getMessage());
        }
    }

    Errand errand() {
        return errand;
    }

    /** What stands behind an option, parted by commas. */
    List<String> several(String option) {
        return call.value(option).map(text -> Arrays.stream(text.split(",")).map(String::strip)
                .filter(word -> !word.isEmpty()).toList()).orElse(List.of());
    }

    Optional<Money> money(String option, Shops shops) throws Unclear {
        Optional<String> text = call.value(option);
        return text.isEmpty() ? Optional.empty() : Optional.of(Cash.read(Plain.line(text.get()), shops.currency()));
    }

    /** The books of the folder that the call names behind its first word, else of the one it is made in. */
    DeskSnapshot snapshot() {
        if (snapshot == null) {
            Path folder = new Paths(terminal).folder(call.paths().size() > 1 ? call.paths().get(1) : ".");
            snapshot = terminal.open(DeskScope.all(Targets.deskOf(folder).orElse(folder))).snapshot();
        }
        return snapshot;
    }

    Meanings meanings() {
        return snapshot().meanings();
    }

    Player player(String word) throws Unclear {
        return new Names(meanings()).player(Plain.line(word));
    }

    Shopper shopper(Player player, Shops shops) throws Unclear {
        return Shopper.of(meanings(), player, errand, shops, this::file);
    }

    /** The name of a list's file. */
    String file(ForceList list) {
        return snapshot().file(list).map(file -> file.getFileName().toString()).orElse("");
    }

    /** What writes JSON. */
    interface Writing {
        String write();
    }

    void answer(List<String> lines, String reply, Writing json) {
        if (call.has("--json")) {
            terminal.answer(json.write());
        } else {
            (call.has("--reply") ? List.of(reply) : lines).forEach(line -> terminal.answer(Plain.line(line)));
        }
        terminal.out().flush();
    }

    private static CurrencyUnit currency(String code) {
        return Amounts.currency(code).orElseThrow(() -> new WrongCall("'" + Plain.line(code)
                + "' is no currency; write its three letters, like EUR or SEK (ISO 4217)."));
    }

}
