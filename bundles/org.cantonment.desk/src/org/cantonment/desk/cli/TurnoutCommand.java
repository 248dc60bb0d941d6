package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.shopping.Closing;
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
        return lists.size() == 1 ? one(call, snapshot, fielding.of(lists.get(0), terms, CancelToken.NEVER))
                : several(call, snapshot, fielding.together(lists, terms, CancelToken.NEVER));
    }

    private int one(Call call, DeskSnapshot snapshot, ListTurnout answer) {
        Optional<Closing> closing = closing(answer.complete(), stopping ->
                Closing.of(snapshot.meanings(), answer, stopping, new SlowProgress(terminal)));
        TurnoutText text = new TurnoutText(answer.closedBy(words(closing)));
        return tell(call, text.lines(), text.reply(), () -> new TurnoutJson(terminal, snapshot, closing).one(answer),
                answer.complete());
    }

    private int several(Call call, DeskSnapshot snapshot, Shared shared) {
        boolean complete = shared.together().lacking() == 0;
        Optional<Closing> closing = closing(complete, stopping ->
                Closing.ofAll(snapshot.meanings(), shared.lists(), stopping, new SlowProgress(terminal)));
        SharedText text = new SharedText(shared, words(closing));
        return tell(call, text.lines(), text.reply(), () -> new TurnoutJson(terminal, snapshot, closing).shared(shared),
                complete);
    }

    /** What closes a shortage; nobody is asked where nothing is short. */
    private static Optional<Closing> closing(boolean complete, Function<CancelToken, Closing> asking) {
        if (complete) {
            return Optional.empty();
        }
        try (Stopping stopping = Stopping.after(OptionalInt.empty())) {
            return Optional.of(asking.apply(stopping));
        }
    }

    private static List<String> words(Optional<Closing> closing) {
        return closing.map(Closing::words).orElse(List.of());
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
        boolean complete = answer.evening().lacking() == 0;
        Optional<Closing> closing = closing(complete, stopping ->
                Closing.together(snapshot.meanings(), answer.lists(), stopping, new SlowProgress(terminal)));
        EveningText text = new EveningText(answer, words(closing));
        return tell(call, text.lines(), text.reply(), () -> new TurnoutJson(terminal, snapshot, closing).evening(answer),
                complete);
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
