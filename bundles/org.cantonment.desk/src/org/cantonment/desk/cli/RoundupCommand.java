package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.roundup.ListLook;
import org.cantonment.desk.roundup.Roundup;
import org.cantonment.desk.roundup.RoundupText;
import org.cantonment.desk.roundup.Season;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;

/** {@code roundup FOLDER}: where a campaign stands. */
final class RoundupCommand {
    private final Terminal terminal;

    RoundupCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    int run(String folder, Optional<String> on) {
        Optional<LocalDate> day = on.map(Days::read);
        Path path = new Paths(terminal).folder(folder);
        DeskSnapshot snapshot = terminal.open(path).snapshot();
        List<Campaign> campaigns = snapshot.meanings().campaigns();
        if (campaigns.isEmpty()) {
            throw new WrongCall("There is no campaign in '" + terminal.show(path)
                    + "': no file there ends in .campaign and can be read as one.");
        }
        for (int i = 0; i < campaigns.size(); i++) {
            if (i > 0) {
                terminal.answer("");
            }
            RoundupText.lines(roundup(campaigns.get(i), snapshot, day))
                    .forEach(line -> terminal.answer(Plain.line(line)));
        }
        return Exit.FINE;
    }

    private static Roundup roundup(Campaign campaign, DeskSnapshot snapshot, Optional<LocalDate> day) {
        Meanings meanings = snapshot.meanings();
        Season season = Season.of(campaign, meanings.weeks(), meanings.names());
        return Roundup.of(season, day, (player, round) -> look(player, round, snapshot),
                meanings::eraTitle);
    }

    private static Optional<ListLook> look(Id player, int round, DeskSnapshot snapshot) {
        return snapshot.meanings().listsOf(player).stream().filter(l -> l.round().orElse(0) == round).findFirst()
                .map(list -> look(player, round, list, snapshot));
    }

    private static ListLook look(Id player, int round, ForceList list, DeskSnapshot snapshot) {
        Judged judged = snapshot.judged(list).orElseThrow();
        List<String> breaches = snapshot.breachesOf(list);
        OptionalInt total = judged.verdict().map(v -> OptionalInt.of((int) Math.min(v.points(), Integer.MAX_VALUE)))
                .orElse(OptionalInt.empty());
        return new ListLook(player, round, total, judged.about().situation().points(), breaches);
    }
}
