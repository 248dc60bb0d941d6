package org.cantonment.notation.names;

import java.util.Map;

import org.cantonment.model.book.BookPackage;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.range.RangePackage;
import org.cantonment.model.ruleset.RulesetPackage;
import org.eclipse.emf.ecore.EClass;

/** What a kind of thing is called when we speak to people. */
public final class Kinds {

    private static final Map<EClass, String> WORDS = Map.ofEntries(
            Map.entry(RangePackage.Literals.STOCKABLE, "piece, part, box, extra or bits"),
            Map.entry(BookPackage.Literals.NEEDABLE, "piece, family or item"),
            Map.entry(RulesetPackage.Literals.COUNTABLE, "unit, kind, formation or support"),
            Map.entry(RulesetPackage.Literals.SELECTABLE, "unit or formation"),
            Map.entry(RulesetPackage.Literals.LET, "name given with 'let'"),
            Map.entry(RulesetPackage.Literals.STANDING, "piece, family or unit"),
            Map.entry(RulesetPackage.Literals.RULED, "unit, formation, support, limit or likeness"),
            Map.entry(RulesetPackage.Literals.EXCUSABLE, "unit, formation, support, limit or check"),
            Map.entry(RulesetPackage.Literals.BILLETED, "billet or support"),
            Map.entry(CampaignPackage.Literals.ROLE_OR_PLAYER, "role or player"),
            Map.entry(CampaignPackage.Literals.PLACE, "table"),
            Map.entry(CampaignPackage.Literals.CHECK_USE, "check"),
            Map.entry(CampaignPackage.Literals.VETERAN, "veteran (named unit)"),
            Map.entry(RulesetPackage.Literals.RULE_SET, "rule set"));

    private Kinds() {
    }

    /** @return the word, or words, for a kind of thing, without an article */
    public static String of(EClass type) {
        String word = WORDS.get(type);
        return word != null ? word : type.getName().toLowerCase(java.util.Locale.ROOT);
    }
}
