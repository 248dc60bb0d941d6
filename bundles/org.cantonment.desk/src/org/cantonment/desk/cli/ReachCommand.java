package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.reach.ReachAnswer;
import org.cantonment.desk.reach.ReachText;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.notation.form.Near;
import org.cantonment.stock.ledger.AsOf;

/** {@code reach PLAYER [FOLDER]}: how far a player's shelf is from every formation in every era. */
final class ReachCommand {
    private final Terminal terminal;

    ReachCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    int run(Call call) {
        if (call.has("--json") && call.has("--reply")) {
            throw new WrongCall("'--json' and '--reply' are two ways to answer; take one.");
        }
        Path folder = new Paths(terminal).folder(call.paths().size() > 1 ? call.paths().get(1) : ".");
        Path place = Targets.deskOf(folder).orElse(folder);
        OptionalInt week = Numbers.from(call, "--week", 1);
        Meanings meanings = CampaignDesk.open(DeskScope.noLists(place), CancelToken.NEVER, new SlowProgress(terminal))
                .snapshot().meanings();
        Player player = player(meanings, call.paths().get(0));
        try {
            ReachAnswer answer = org.cantonment.desk.reach.Lookout.of(meanings, player, week.isPresent() ? AsOf.week(week.getAsInt()) : AsOf.NOW,
                    call.value("--era")).pieces(CancelToken.NEVER, new SlowProgress(terminal));
            ReachText text = new ReachText(answer);
            if (call.has("--json")) {
                terminal.answer(ReachJson.write(answer));
            } else {
                (call.has("--reply") ? List.of(text.reply()) : text.lines())
                        .forEach(line -> terminal.answer(Plain.line(line)));
            }
            return Exit.FINE;
        } catch (ReachAnswer.Unclear e) {
            throw new WrongCall(e.getMessage());
        }
    }

    private static Player player(Meanings meanings, String word) {
        Optional<Player> player = ReachAnswer.player(meanings, word);
        if (player.isPresent()) {
            return player.get();
        }
        List<String> names = meanings.campaigns().stream().flatMap(campaign -> campaign.players().stream())
                .map(one -> ListTitle.player(one.id(), meanings)).toList();
        throw new WrongCall(names.isEmpty() ? "There is no campaign with players in this folder."
                : "There is no player '" + Plain.line(word) + "' here." + Near.of(word, names)
                        .map(near -> " Did you mean '" + near + "'?").orElse(" There are " + String.join(", ", names) + "."));
    }
}
