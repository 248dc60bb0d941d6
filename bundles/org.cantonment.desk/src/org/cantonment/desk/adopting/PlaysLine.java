package org.cantonment.desk.adopting;

import java.util.List;

import org.cantonment.desk.files.LastLine;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Plays;
import org.cantonment.notation.Document;
import org.cantonment.notation.text.TextChange;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** The line of a campaign that says what it plays. */
final class PlaysLine {
    private PlaysLine() {
    }

    /** Names one book more, behind the last one named; in a line of its own at the end where none is named yet. */
    static TextChange with(Document campaign, String book) {
        List<Plays> lines = campaign.book()
                .map(root -> EcoreUtil2.getAllContentsOfType(root, Plays.class)).orElse(List.of());
        for (int i = lines.size() - 1; i >= 0; i--) {
            List<INode> named = NodeModelUtils.findNodesForFeature(lines.get(i), CampaignPackage.Literals.PLAYS__RULES);
            if (!named.isEmpty()) {
                return new TextChange(named.get(named.size() - 1).getTotalEndOffset(), 0, ", " + book);
            }
        }
        return LastLine.add(campaign.text(), "plays " + book);
    }
}
