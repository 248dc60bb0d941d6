package org.cantonment.rules.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Basis;

/** What is only said of an entry because its era does not have it: that it must go says it all. */
public final class Aftermath {

    private static final Set<String> FOLLOWING = Set.of("strength.not-offered", "option.not-now", "unit.loose");

    private Aftermath() {
    }

    /**
     * Takes out what follows from an entry's being outside its era: that it has no place, that it is not offered so, that
     * it lacks what is to stand in it or beside it. What limits count stays, and so does everything about an entry that a
     * dispensation lets stand.
     */
    public static void clear(Muster muster, List<Basis> findings) {
        Set<Id> gone = new HashSet<>();
        for (Basis basis : findings) {
            if (basis.finding().code().startsWith("era.") && basis.finding().severity() == Severity.BREACH) {
                gone.add(basis.finding().at());
            }
        }
        if (gone.isEmpty()) {
            return;
        }
        for (Node node : muster.nodes()) {
            if (node.choice() == null || !node.choice().permission().outOfEra()) {
                gone.remove(node.entry().id());
            }
        }
        findings.removeIf(basis -> gone.contains(basis.finding().at()) && follows(basis.finding().code()));
    }

    private static boolean follows(String code) {
        return FOLLOWING.contains(code) || code.startsWith("billet.") || code.startsWith("support.")
                || code.startsWith("taking.");
    }
}
