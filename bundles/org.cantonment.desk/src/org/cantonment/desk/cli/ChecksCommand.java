package org.cantonment.desk.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.rules.guest.CheckText;
import org.cantonment.desk.checks.ChecksFolder;
import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Nearest;
import org.cantonment.domain.finding.Finding;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.KnownCheck;

/** {@code checks [NAME|FOLDER]}: which checks of others are at hand, and what they take. */
final class ChecksCommand {
    /**
     * A line of a campaign that turns a check on.
     *
     * @param findings what is to be said at the line
     */
    record Use(CheckUse line, String campaign, List<Finding> findings) {
    }

    private final Terminal terminal;
    private final Guests guests;

    ChecksCommand(Terminal terminal) {
        this.terminal = terminal;
        this.guests = terminal.guests().orElseGet(Guests::new);
    }

    int run(Optional<String> what, boolean json, boolean reference) {
        Optional<String> name = what.filter(word -> Character.isUpperCase(word.codePointAt(0))
                && !Files.exists(terminal.resolve(word)));
        List<KnownCheck> checks = name.map(this::one).map(List::of).orElseGet(guests::known);
        List<Use> uses = what.isPresent() && name.isEmpty() ? uses(new Paths(terminal).folder(what.get())) : List.of();
        if (json) {
            terminal.answer(ChecksJson.write(checks, guests.refusals(), uses, terminal));
        } else if (reference) {
            reference(checks);
        } else {
            text(checks, uses);
        }
        return Exit.FINE;
    }

    private KnownCheck one(String name) {
        return guests.known(name).orElseThrow(() -> new WrongCall("There is no check '" + Plain.line(name) + "' at hand."
                + Nearest.of(name, guests.known().stream().map(KnownCheck::name).toList())
                        .map(near -> " Did you mean '" + near + "'?").orElse("")));
    }

    private List<Use> uses(Path folder) {
        List<Use> uses = new ArrayList<>();
        terminal.open(folder).snapshot().meanings().campaigns().forEach(campaign -> campaign.checks()
                .forEach(line -> uses.add(new Use(line, campaign.title(), guests.ofLines(List.of(line))))));
        return uses;
    }

    private void text(List<KnownCheck> checks, List<Use> uses) {
        if (checks.isEmpty()) {
            terminal.answer("No checks of others are at hand.");
        }
        checks.forEach(check -> CheckText.lines(check).forEach(line -> terminal.answer(Plain.line(line))));
        guests.refusals().forEach(refusal -> terminal.answer("not let in: " + Plain.line(refusal.why())));
        for (Use use : uses) {
            String state = use.findings().isEmpty() ? "is at hand." : use.findings().get(0).message();
            terminal.answer(Plain.line(use.campaign() + " turns on " + use.line().name() + ": " + state));
        }
        terminal.answer("A jar with checks goes into " + terminal.show(ChecksFolder.path()) + " and counts from then on.");
    }

    private void reference(List<KnownCheck> checks) {
        for (int i = 0; i < checks.size(); i++) {
            if (i > 0) {
                terminal.answer("");
            }
            CheckText.reference(checks.get(i)).forEach(line -> terminal.answer(Plain.line(line)));
        }
    }
}
