package org.cantonment.notation.reading;

import java.util.Optional;
import java.util.regex.Pattern;

import org.cantonment.domain.campaign.Doing;
import org.cantonment.domain.campaign.Forfeit;
import org.cantonment.domain.campaign.Game;
import org.cantonment.domain.campaign.Meeting;
import org.cantonment.domain.campaign.Result;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.campaign.Act;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Deed;
import org.cantonment.model.campaign.Player;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** What two players did: played, met, or one gave the game to the other. */
final class GameReader {

    private static final Pattern SCORE = Pattern.compile("(\\d+)\\s*:\\s*(\\d+)$");

    private final Reading reading;

    GameReader(Reading reading) {
        this.reading = reading;
    }

    /** @return what was done; empty if it was something else, or nobody knows the other, or it is oneself */
    Optional<Doing> read(Deed deed) {
        Act act = deed.getAct();
        if (act instanceof org.cantonment.model.campaign.Game game) {
            return other(deed, game.getOther(), CampaignPackage.Literals.GAME__OTHER).flatMap(other -> game(game, other));
        }
        if (act instanceof org.cantonment.model.campaign.Meeting meeting) {
            return other(deed, meeting.getOther(), CampaignPackage.Literals.MEETING__OTHER).map(Meeting::new);
        }
        return act instanceof org.cantonment.model.campaign.Forfeit forfeit
                ? other(deed, forfeit.getOther(), CampaignPackage.Literals.FORFEIT__OTHER).map(Forfeit::new)
                : Optional.empty();
    }

    private Optional<Id> other(Deed deed, Player other, EReference feature) {
        Optional<Id> id = Reading.ref(other);
        if (id.isPresent() && id.equals(Reading.ref(deed.getWho()))) {
            reading.problem(deed.getAct(), feature, Severity.BREACH, Codes.SELF,
                    "Nobody plays himself; this line is left out.");
            return Optional.empty();
        }
        return id;
    }

    private Optional<Doing> game(org.cantonment.model.campaign.Game game, Id other) {
        if (game.getResult() == null) {
            return Optional.empty();
        }
        boolean drawn = "drew".equals(game.getResult());
        if (game.getOwn() == null || game.getTheirs() == null) {
            return Optional.of(new Game(drawn, other, Optional.empty()));
        }
        int own = game.getOwn();
        int theirs = game.getTheirs();
        boolean fits = drawn ? own == theirs : own > theirs;
        if (!fits) {
            contradiction(game, own, theirs);
        }
        return Optional.of(new Game(drawn, other, fits ? Optional.of(new Result(own, theirs)) : Optional.empty()));
    }

    private void contradiction(org.cantonment.model.campaign.Game game, int own, int theirs) {
        boolean drawn = "drew".equals(game.getResult());
        if (!drawn && own < theirs) {
            INode node = NodeModelUtils.findActualNodeFor(game);
            String text = node == null ? "" : NodeModelUtils.getTokenText(node).strip();
            reading.problem(game, null, Severity.BREACH, Codes.SCORE, "The winner's score stands first: write "
                    + theirs + ':' + own + ", or swap the two names.", SCORE.matcher(text).replaceFirst("$2:$1"));
            return;
        }
        reading.problem(game, CampaignPackage.Literals.GAME__OWN, Severity.BREACH, Codes.SCORE,
                drawn ? own + ":" + theirs + " is no draw; who won 'beat' the other."
                        : own + ":" + theirs + " is a draw; write 'drew'.");
    }
}
