package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.adopting.Adoption;
import org.cantonment.desk.adopting.AdoptionText;
import org.cantonment.desk.adopting.ListChange.Kind;
import org.cantonment.desk.adopting.Proposal;
import org.cantonment.desk.files.BookFiles;
import org.cantonment.desk.files.TextReading;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.finding.Severity;

/** {@code adopt RULES FOLDER}: what a layer or a changed book would do to all lists of a campaign. */
final class AdoptCommand {
    private final Terminal terminal;

    AdoptCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    int run(List<String> words, boolean json) {
        Paths paths = new Paths(terminal);
        Path file = paths.existing(words.get(0));
        if (!BookFiles.extension(file).equals("rules")) {
            throw new WrongCall("'" + terminal.show(file) + "' is no book of rules: its name does not end in .rules.");
        }
        Path folder = paths.folder(words.get(1));
        CampaignDesk desk = terminal.open(folder);
        if (desk.snapshot().meanings().campaigns().isEmpty()) {
            throw new WrongCall("There is no campaign in '" + terminal.show(folder)
                    + "', so nobody there could adopt anything.");
        }
        Proposal proposal = proposal(desk, file);
        if (json) {
            terminal.answer(new AdoptJson(terminal).write(proposal));
        } else {
            new AdoptionText(terminal::show).lines(proposal).forEach(line -> terminal.answer(Plain.line(line)));
        }
        Adoption adoption = proposal.adoption();
        boolean worse = !adoption.of(Kind.NOW_BREACH).isEmpty()
                || adoption.said().stream().map(LocatedFinding::severity).anyMatch(Severity.BREACH::equals);
        return worse ? Exit.BREACH : Exit.FINE;
    }

    private Proposal proposal(CampaignDesk desk, Path file) {
        try {
            return Proposal.of(desk, file, TextReading.of(file).text(), CancelToken.NEVER);
        } catch (IOException e) {
            throw new WrongCall("'" + terminal.show(file) + "' " + e.getMessage() + ".");
        } catch (Proposal.Refused e) {
            throw new WrongCall(e.getMessage());
        }
    }
}
