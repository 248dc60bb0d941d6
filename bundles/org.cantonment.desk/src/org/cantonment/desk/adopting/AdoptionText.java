package org.cantonment.desk.adopting;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.adopting.ListChange.Kind;

/** A proposal in words, for a terminal or a page. */
public final class AdoptionText {
    private final Function<Path, String> show;

    /** @param show a file as the reader would write it */
    public AdoptionText(Function<Path, String> show) {
        this.show = show;
    }

    /** All lines: what is proposed, then each group that is not empty, then how many stay as they are. */
    public List<String> lines(Proposal proposal) {
        List<String> lines = new ArrayList<>();
        lines.add(heading(proposal));
        Adoption adoption = proposal.adoption();
        if (!adoption.said().isEmpty()) {
            lines.add("Said of the books (" + adoption.said().size() + "):");
            adoption.said().forEach(finding -> lines.add("  " + show.apply(finding.file()) + ':' + sentence(finding)));
        }
        group(lines, "Not legal any more", adoption.of(Kind.NOW_BREACH));
        group(lines, "Legal from now on", adoption.of(Kind.NO_LONGER_BREACH));
        group(lines, "Not legal for other reasons", adoption.of(Kind.OTHER_BREACHES));
        group(lines, "Another total", adoption.of(Kind.TOTAL));
        int same = adoption.of(Kind.NONE).size();
        lines.add("Unchanged: " + same + (same == 1 ? " list." : " lists."));
        return lines;
    }

    /** What is proposed, in a sentence. */
    public static String heading(Proposal proposal) {
        String who = proposal.played().stream().map(Proposal.Played::title).collect(Collectors.joining(" and "));
        String how = proposal.changed() ? "the new text instead of the present one" : "";
        String plays = who.isEmpty() ? "" : "to be played by " + who;
        return proposal.title() + ": " + how + (how.isEmpty() || plays.isEmpty() ? "" : ", ") + plays + '.';
    }

    private void group(List<String> lines, String title, List<ListChange> changes) {
        if (changes.isEmpty()) {
            return;
        }
        lines.add(title + " (" + changes.size() + "):");
        for (ListChange change : changes) {
            lines.add("  " + show.apply(change.file()) + " (" + change.title() + "): " + points(change));
            change.broken().forEach(finding -> lines.add("    now  " + sentence(finding)));
            change.cleared().forEach(finding -> lines.add("    gone " + sentence(finding)));
        }
    }

    /** "140 points", or "140 to 132 points". */
    public static String points(ListChange change) {
        String after = number(change.after().points());
        return (change.totalChanges() ? number(change.before().points()) + " to " + after : after) + " points";
    }

    private static String number(OptionalLong points) {
        return points.isPresent() ? Long.toString(points.getAsLong()) : "unknown";
    }

    private static String sentence(LocatedFinding finding) {
        return finding.line() + ":" + finding.column() + ": " + finding.severity().name().toLowerCase(Locale.ROOT) + ' '
                + finding.code() + ": " + finding.message();
    }
}
