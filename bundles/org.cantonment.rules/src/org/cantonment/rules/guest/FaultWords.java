package org.cantonment.rules.guest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Nearest;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.SetText;
import org.cantonment.domain.finding.Severity;

/** What is said at a campaign's line about a check that cannot be asked. */
final class FaultWords {

    private static final int MOST_REFUSALS = 3;

    private FaultWords() {
    }

    static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + '.';
    }

    static Finding fault(CheckUse use, KnownCheck check) {
        return say("check.fault", use, "The check " + use.name() + " of " + check.origin().words() + ' '
                + ended(check.shutOut().orElseThrow())
                + " It is not asked again before the next start, and no list is judged by it.",
                Mend.advice("Tell whoever wrote the plug-in, or take out this line."));
    }

    static Finding refused(CheckUse use, Refusal refusal) {
        return say("check.fault", use, refusal.why());
    }

    static Finding missing(CheckUse use, List<KnownCheck> known, List<Refusal> refusals) {
        StringBuilder message = new StringBuilder("No check called '" + use.name()
                + "' is installed here, so nothing is judged by it.");
        refusals.stream().limit(MOST_REFUSALS).forEach(refusal -> message.append(' ').append(refusal.why()));
        if (refusals.size() > MOST_REFUSALS) {
            message.append(" And ").append(refusals.size() - MOST_REFUSALS).append(" more were not let in.");
        }
        List<Mend> mends = new ArrayList<>();
        Optional<String> near = Nearest.of(use.name(), known.stream().map(KnownCheck::name).toList());
        near.ifPresent(name -> mends.add(new Mend("Write " + name + '.', List.of(new SetText(use.id(), name)))));
        mends.add(Mend.advice("Install the plug-in that gives it, or take out this line."));
        return say("check.missing", use, message.toString(), mends.toArray(Mend[]::new));
    }

    private static Finding say(String code, CheckUse use, String message, Mend... mends) {
        return new Finding(code, Severity.CAUTION, use.id(), Optional.empty(), message, List.of(mends));
    }
}
