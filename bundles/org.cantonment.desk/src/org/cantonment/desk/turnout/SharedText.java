package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cantonment.desk.turnout.Fielding.Shared;

/** What several lists share, in words. */
public final class SharedText {
    private final Shared shared;
    private final List<String> closing;

    /**
     * Of an answer.
     *
     * @param closing whole sentences: what to buy at least cost where something is short
     */
    public SharedText(Shared shared, List<String> closing) {
        this.shared = shared;
        this.closing = List.copyOf(closing);
    }

    /** "4 lists, one choice of what is glued: all can be fielded." */
    public String heading() {
        int lacking = shared.together().lacking();
        return shared.lists().size() + " lists, one choice of what is glued: " + (lacking == 0 ? "all of them can be fielded."
                : lacking + (lacking == 1 ? " piece is" : " pieces are") + " short in all.");
    }

    /** All of it: the choice, then each list. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        lines.addAll(builds());
        if (!shared.together().proven()) {
            lines.add("The best that was found; no choice fills more than " + shared.together().bound() + " places.");
        }
        lines.addAll(closing);
        for (ListTurnout list : shared.lists()) {
            lines.add("");
            lines.addAll(new TurnoutText(list).lines());
        }
        return lines;
    }

    /** "  2 Car frame as 1 Crank car, glued for good". */
    public List<String> builds() {
        if (shared.builds().isEmpty()) {
            return List.of("  Nothing need be glued for them.");
        }
        TurnoutText text = new TurnoutText(shared.lists().get(0));
        return shared.builds().stream().map(build -> "  Glue " + text.build(build).replace(", glued for good", "") + ".")
                .toList();
    }

    /** The answer for a chat. */
    public String reply() {
        String lacks = shared.lists().stream().filter(list -> !list.complete()).map(list -> list.title() + ": "
                + list.turnout().lacking() + " short").collect(Collectors.joining("; "));
        StringBuilder text = new StringBuilder(heading());
        if (!lacks.isEmpty() && text.length() + lacks.length() + 2 < TurnoutText.REPLY) {
            text.append(' ').append(lacks).append('.');
        }
        List<String> more = new ArrayList<>(closing);
        more.addAll(builds());
        for (String line : more) {
            if (text.length() + line.length() < TurnoutText.REPLY) {
                text.append(' ').append(line.strip());
            }
        }
        return text.toString();
    }
}
