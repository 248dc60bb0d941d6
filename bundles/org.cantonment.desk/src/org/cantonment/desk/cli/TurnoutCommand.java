package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.turnout.EveningAnswer;
import org.cantonment.desk.turnout.EveningText;
import org.cantonment.desk.turnout.Fielding;
import org.cantonment.desk.turnout.Fielding.Shared;
import org.cantonment.desk.turnout.Fielding.Terms;
import org.cantonment.desk.turnout.ListTurnout;
import org.cantonment.desk.turnout.SharedText;
import org.cantonment.desk.turnout.TurnoutText;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Level;

/** {@code turnout LIST…}: whether a shelf can field a list, or one choice of builds several, or an evening's lists together. */
final class TurnoutCommand {
    private final Terminal terminal;
    private final Paths paths;

    TurnoutCommand(Terminal terminal) {
        this.terminal = terminal;
        this.paths = new Paths(terminal);
    }

    int run(Call call) {
        if (call.has("--json") && call.has("--reply")) {
            throw new WrongCall("'--json' and '--reply' are two ways to answer; take one.");
        }
        Terms terms = new Terms(Numbers.from(call, "--week", 1), call.value("--likeness").map(TurnoutCommand::level));
        OptionalInt round = Numbers.from(call, "--round", 1);
        if (call.value("--session").isPresent() != round.isPresent()) {
            throw new WrongCall("'--session' and '--round' go together: an evening is named by both.");
        }
        try {
            return round.isPresent() ? evening(call, round.getAsInt(), terms) : lists(call, terms);
        } catch (Fielding.Unclear e) {
            throw new WrongCall(e.getMessage());
        }
    }

    private int lists(Call call, Terms terms) throws Fielding.Unclear {
        Set<Path> files = new LinkedHashSet<>();
        call.paths().forEach(path -> files.add(paths.list(path)));
        Path folder = Targets.withShelves(files.iterator().next()).place();
        for (Path file : files) {
            if (!Targets.withShelves(file).place().equals(folder)) {
                throw new WrongCall("'" + terminal.show(file) + "' is not of the same folder of books as the others.");
            }
        }
        CampaignDesk desk = CampaignDesk.open(DeskScope.only(folder, files).withShelves(), CancelToken.NEVER,
                new SlowProgress(terminal));
        DeskSnapshot snapshot = desk.snapshot();
        List<ForceList> lists = new ArrayList<>();
        for (Path file : files) {
            lists.add(snapshot.meanings().lists().stream().filter(list -> snapshot.file(list).filter(file::equals)
                    .isPresent()).findFirst().orElseThrow(() -> new WrongCall("'" + terminal.show(file)
                            + "' cannot be read as a list.")));
        }
        Fielding fielding = new Fielding(snapshot.meanings());
        if (lists.size() == 1) {
            ListTurnout answer = fielding.of(lists.get(0), terms, CancelToken.NEVER);
            TurnoutText text = new TurnoutText(answer);
            return tell(call, text.lines(), text.reply(), () -> new TurnoutJson(terminal, snapshot).one(answer),
                    answer.complete());
        }
        Shared shared = fielding.together(lists, terms, CancelToken.NEVER);
        SharedText text = new SharedText(shared);
        return tell(call, text.lines(), text.reply(), () -> new TurnoutJson(terminal, snapshot).shared(shared),
                shared.together().lacking() == 0);
    }

    private int evening(Call call, int round, Terms terms) throws Fielding.Unclear {
        if (call.paths().size() != 1) {
            throw new WrongCall("For an evening name the campaign's folder, and no lists.");
        }
        Path folder = paths.folder(call.paths().get(0));
        CampaignDesk desk = CampaignDesk.open(folder, CancelToken.NEVER, new SlowProgress(terminal));
        DeskSnapshot snapshot = desk.snapshot();
        EveningAnswer answer = EveningAnswer.of(new Fielding(snapshot.meanings()), call.value("--session").orElseThrow(),
                round, terms, CancelToken.NEVER);
        EveningText text = new EveningText(answer);
        return tell(call, text.lines(), text.reply(), () -> new TurnoutJson(terminal, snapshot).evening(answer),
                answer.evening().lacking() == 0);
    }

    /** Writes an answer in JSON. */
    private interface Writing {
        String write();
    }

    private int tell(Call call, List<String> lines, String reply, Writing json, boolean complete) {
        if (call.has("--json")) {
            terminal.answer(json.write());
        } else {
            (call.has("--reply") ? List.of(reply) : lines).forEach(line -> terminal.answer(Plain.line(line)));
        }
        return complete ? Exit.FINE : Exit.BREACH;
    }

    private static Level level(String word) {
        return Optional.of(word.toLowerCase(Locale.ROOT)).flatMap(small -> switch (small) {
            case "exact" -> Optional.of(Level.EXACT);
            case "kindred" -> Optional.of(Level.KINDRED);
            case "stand-in" -> Optional.of(Level.STAND_IN);
            default -> Optional.empty();
        }).orElseThrow(() -> new WrongCall("'" + Plain.line(word) + "' is no likeness: write exact, kindred or stand-in."));
    }
}
