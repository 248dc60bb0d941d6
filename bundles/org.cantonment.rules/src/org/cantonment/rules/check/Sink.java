package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.view.Basis;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** Takes what checks say, and makes a note of what a dispensation covers. */
public final class Sink {

    private final Situation situation;
    private final Ruling ruling;
    private final List<Basis> findings = new ArrayList<>();

    /** A sink for one case. */
    public Sink(Situation situation, Ruling ruling) {
        this.situation = situation;
        this.ruling = ruling;
    }

    /** What was said, in the order in which it was said. */
    public List<Basis> findings() {
        return findings;
    }

    /**
     * Takes a finding.
     *
     * @param card the unit, formation, support or limit whose rule it is
     * @param subject the unit or formation that is at fault; the card itself where there is none
     */
    void add(Id card, Id subject, Finding finding) {
        if (finding.severity() != Severity.NOTE) {
            for (Excuse excuse : situation.excuses()) {
                if (covers(excuse, card, subject)) {
                    findings.add(new Basis(excused(finding, excuse), card, subject));
                    return;
                }
            }
        }
        findings.add(new Basis(finding, card, subject));
    }

    /** Whether a dispensation covers what is said of this card and subject. */
    boolean excused(Id card, Id subject) {
        return situation.excuses().stream().anyMatch(excuse -> covers(excuse, card, subject));
    }

    /** Takes a breach. */
    void breach(Id card, Id subject, String code, Id at, Optional<Id> rule, String message, List<Mend> mends) {
        add(card, subject, new Finding(code, Severity.BREACH, at, rule, message, mends));
    }

    private boolean covers(Excuse excuse, Id card, Id subject) {
        return situation.player().isPresent() && excuse.player().equals(situation.player().get())
                && excuse.rule().equals(card)
                && (excuse.at().isEmpty() || excuse.at().get().equals(subject) || excuse.at().get().equals(card))
                && excuse.when().covers(ruling.occasion(), ruling.eras());
    }

    private Finding excused(Finding finding, Excuse excuse) {
        String why = excuse.reason().isEmpty() ? "" : ": " + excuse.reason();
        return new Finding(finding.code(), Severity.NOTE, finding.at(), finding.rule(),
                finding.message() + " Excused by " + excuse.by().name() + why + '.', List.of());
    }
}
