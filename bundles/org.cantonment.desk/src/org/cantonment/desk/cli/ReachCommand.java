package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.reach.BoxesAnswer;
import org.cantonment.desk.reach.BoxesText;
import org.cantonment.desk.reach.Lookout;
import org.cantonment.desk.reach.ReachAnswer;
import org.cantonment.desk.reach.ReachText;
import org.cantonment.desk.shopping.Names;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.stock.ledger.AsOf;

/** {@code reach PLAYER [FOLDER]}: how far a player's shelf is from every formation in every era, or what boxes would open. */
final class ReachCommand {
    private final Terminal terminal;
    private final Call call;
    private final ShoppingCall shopping;

    ReachCommand(Terminal terminal, Call call) {
        this.terminal = terminal;
        this.call = call;
        this.shopping = new ShoppingCall(terminal, call);
    }

    int run() {
        boolean shops = call.has("--boxes") || Stream.of("--on", "--from", "--in").anyMatch(word -> call.value(word).isPresent());
        if (call.has("--pieces") && shops) {
            throw new WrongCall("'--pieces' tells no money, so it cannot stand beside '--boxes', '--on', '--from' or '--in'.");
        }
        return ShoppingCall.telling(this::ask);
    }

    private int ask() throws Unclear {
        Path folder = new Paths(terminal).folder(call.paths().size() > 1 ? call.paths().get(1) : ".");
        Path place = Targets.deskOf(folder).orElse(folder);
        OptionalInt week = Numbers.from(call, "--week", 1);
        Meanings meanings = CampaignDesk.open(DeskScope.noLists(place), CancelToken.NEVER, new SlowProgress(terminal))
                .snapshot().meanings();
        Player player = new Names(meanings).player(Plain.line(call.paths().get(0)));
        try {
            Lookout lookout = Lookout.of(meanings, player, week.isPresent() ? AsOf.week(week.getAsInt()) : AsOf.NOW,
                    call.value("--era"));
            ReachAnswer pieces = lookout.pieces(CancelToken.NEVER, new SlowProgress(terminal));
            return call.has("--boxes") ? boxes(lookout, pieces, shops(meanings, player))
                    : answer(call.has("--pieces") ? pieces : money(lookout, pieces, meanings, player));
        } catch (ReachAnswer.Unclear e) {
            throw new WrongCall(e.getMessage());
        }
    }

    private Shops shops(Meanings meanings, Player player) throws Unclear {
        return Shops.of(meanings, Optional.of(player.id()), shopping.errand());
    }

    /** Where nobody sells anything, or nothing says at what prices, the pieces are told all the same. */
    private ReachAnswer money(Lookout lookout, ReachAnswer pieces, Meanings meanings, Player player) throws Unclear {
        Shops shops;
        try {
            shops = shops(meanings, player);
        } catch (Unclear e) {
            if (Stream.of("--on", "--from", "--in").anyMatch(word -> call.value(word).isPresent())) {
                throw e;
            }
            return pieces.withoutMoney(e.getMessage());
        }
        try (Stopping stopping = Stopping.after(Numbers.from(call, "--seconds", 0))) {
            return lookout.money(pieces, shops, stopping, new SlowProgress(terminal));
        }
    }

    private int answer(ReachAnswer answer) {
        ReachText text = new ReachText(answer);
        shopping.answer(text.lines(), text.reply(), () -> ReachJson.write(answer));
        return Exit.FINE;
    }

    private int boxes(Lookout lookout, ReachAnswer pieces, Shops shops) {
        BoxesAnswer answer = lookout.boxes(pieces, shops, CancelToken.NEVER, new SlowProgress(terminal));
        BoxesText text = new BoxesText(answer);
        shopping.answer(text.lines(), text.reply(), () -> BoxesJson.write(answer));
        return Exit.FINE;
    }
}
