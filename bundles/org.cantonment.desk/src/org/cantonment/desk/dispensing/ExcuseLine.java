package org.cantonment.desk.dispensing;

import java.util.List;
import java.util.Optional;

import org.cantonment.desk.files.LastLine;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.campaign.Show;
import org.cantonment.domain.common.Id;
import org.cantonment.notation.Document;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextMend;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** Writes dispensations into one campaign: behind the last one there, else as its last line. */
final class ExcuseLine {
    /** Stands where the organiser is to write who gives the word; nobody may be called so, and a finding says it. */
    private static final String SOMEBODY = "Who";

    private final Document document;
    private final String by;
    private final Optional<Integer> behind;

    ExcuseLine(Campaign campaign, Document document) {
        this.document = document;
        List<Excuse> excuses = campaign.excuses();
        Optional<Excuse> last = excuses.isEmpty() ? Optional.empty() : Optional.of(excuses.get(excuses.size() - 1));
        this.by = last.map(excuse -> excuse.by().name()).or(() -> organiser(campaign)).orElse(SOMEBODY);
        this.behind = last.map(excuse -> document.places().get(excuse.id())).map(this::endOf);
    }

    // Who alone is shown what is hidden from the others runs the campaign.
    private static Optional<String> organiser(Campaign campaign) {
        List<Id> shown = campaign.shows().stream().filter(show -> !show.all()).map(Show::players)
                .filter(players -> players.size() == 1).map(players -> players.get(0)).distinct().toList();
        return shown.size() == 1 ? Optional.of(shown.get(0).name()) : Optional.empty();
    }

    private int endOf(EObject excuse) {
        ICompositeNode node = NodeModelUtils.findActualNodeFor(excuse);
        int last = Math.max(node.getOffset(), node.getEndOffset() - 1);
        return document.lines().startOf(document.lines().lineOf(last) + 1);
    }

    TextMend write(Id player, String called, String rule, Optional<String> at, int round) {
        String line = "excuse " + player.name() + " from " + rule + at.map(unit -> " at " + unit).orElse("")
                + " in round " + round + " by " + by + " \"\"";
        String text = document.text();
        TextChange change = behind.filter(offset -> offset < text.length())
                .map(offset -> new TextChange(offset, 0, line + (text.contains("\r\n") ? "\r\n" : "\n")))
                .orElseGet(() -> LastLine.add(text, line));
        return new TextMend("Excuse " + called + " from " + rule + at.map(unit -> " at " + unit).orElse("")
                + " in round " + round + ", in the campaign.", List.of(change), Optional.of(document.file()));
    }
}
