package org.cantonment.notation.form;

import java.util.Map;
import java.util.Set;

import org.cantonment.model.book.BookPackage;
import org.cantonment.model.book.Line;
import org.cantonment.model.book.Named;
import org.cantonment.model.book.Note;
import org.cantonment.model.ruleset.Change;
import org.cantonment.model.ruleset.RulesetPackage;
import org.eclipse.emf.ecore.EClass;

/** Which line may stand under which heading of a rule set: data that reading, completion and the reference share. */
public final class LinePlaces {

    private static final Map<EClass, Set<EClass>> UNDER = Map.of(
            RulesetPackage.Literals.UNIT, Set.of(RulesetPackage.Literals.IS, RulesetPackage.Literals.SIDE_OF,
                    RulesetPackage.Literals.AVAILABLE, RulesetPackage.Literals.STRENGTH, RulesetPackage.Literals.NEEDS,
                    RulesetPackage.Literals.OPTION, RulesetPackage.Literals.DEARER, RulesetPackage.Literals.SURCHARGE,
                    RulesetPackage.Literals.LET, RulesetPackage.Literals.BECOMES, RulesetPackage.Literals.CALLED,
                    RulesetPackage.Literals.WITHOUT),
            RulesetPackage.Literals.FORMATION, Set.of(RulesetPackage.Literals.SIDE_OF,
                    RulesetPackage.Literals.AVAILABLE, RulesetPackage.Literals.COSTS, RulesetPackage.Literals.SURCHARGE,
                    RulesetPackage.Literals.LET, RulesetPackage.Literals.BILLET, RulesetPackage.Literals.CALLED, RulesetPackage.Literals.WITHOUT),
            RulesetPackage.Literals.SUPPORT, Set.of(RulesetPackage.Literals.SIDE_OF,
                    RulesetPackage.Literals.AVAILABLE),
            RulesetPackage.Literals.LIMIT, Set.of(RulesetPackage.Literals.BOUND, RulesetPackage.Literals.TAKING,
                    RulesetPackage.Literals.KEEP, RulesetPackage.Literals.BEFORE, RulesetPackage.Literals.LET,
                    RulesetPackage.Literals.ALWAYS, RulesetPackage.Literals.PROVIDED, RulesetPackage.Literals.SAYS,
                    RulesetPackage.Literals.MEND_TEXT, RulesetPackage.Literals.AVAILABLE),
            RulesetPackage.Literals.LIKENESS, Set.of(RulesetPackage.Literals.ALLOWS, RulesetPackage.Literals.STANDS,
                    RulesetPackage.Literals.TURNS, RulesetPackage.Literals.ONE_TABLE),
            RulesetPackage.Literals.EXAMPLE, Set.of(org.cantonment.model.force.ForcePackage.Literals.ENTRY,
                    org.cantonment.model.force.ForcePackage.Literals.SUPPORT_HERE, RulesetPackage.Literals.GIVES));

    private LinePlaces() {
    }

    /**
     * @param card a heading of a rule set
     * @param line a line under it
     * @return whether the line means something there; under a change, what its target takes; a note always does, and
     *         so does a line that could not be read, since that is a finding of its own
     */
    public static boolean allows(Line card, Line line) {
        if (line instanceof Note || line.eClass() == BookPackage.Literals.LINE
                || card.eClass() == BookPackage.Literals.LINE) {
            return true;
        }
        if (card instanceof Change change) {
            return change.getTarget() == null || change.getTarget().eIsProxy()
                    || under(change.getTarget().eClass()).contains(line.eClass());
        }
        return under(card.eClass()).contains(line.eClass());
    }

    private static Set<EClass> under(EClass card) {
        return UNDER.getOrDefault(card, Set.of());
    }

    /** @return a heading's words for people, such as "unit Gun-Troop" */
    public static String headingOf(Line card) {
        String kind = card.eClass() == BookPackage.Literals.LINE ? "that line"
                : card.eClass().getName().toLowerCase(java.util.Locale.ROOT);
        return card instanceof Named named && named.getName() != null ? kind + " " + named.getName() : kind;
    }
}
