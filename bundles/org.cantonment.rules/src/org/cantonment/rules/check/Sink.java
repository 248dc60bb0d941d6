package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.view.Basis;
import org.cantonment.rules.view.Dispensation;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** Takes what checks say, and makes a note of what a dispensation covers. */
public final class Sink {

    private final Situation situation;
    private final Ruling ruling;
    private final boolean mending;
    private final List<Basis> findings = new ArrayList<>();

    /** A sink for one case. @param mending whether anybody asks for mends */
    public Sink(Situation situation, Ruling ruling, boolean mending) {
        this.situation = situation;
        this.ruling = ruling;
        this.mending = mending;
    }

    /** What was said, in the order in which it was said. */
    public List<Basis> findings() {
        return findings;
    }

    /** What would mend a finding; nothing if nobody asks. */
    List<Mend> mends(Supplier<List<Mend>> mends) {
        return mending ? mends.get() : List.of();
    }

    /**
     * Takes a finding.
     *
     * @param card the unit, formation, support or limit whose rule it is
     * @param subject the unit or formation that is at fault; the card itself where there is none
     */
    void add(Id card, Id subject, Finding finding) {
        add(card, subject, finding, Dispensation.fromRule(situation, ruling, card, subject));
    }

    /** Takes a finding that rests on the limit of points. @param card what sets the limit */
    void addOfLimit(Id card, Finding finding) {
        add(card, card, finding, Dispensation.fromLimit(situation, ruling));
    }

    private void add(Id card, Id subject, Finding finding, Optional<Excuse> excuse) {
        Finding bare = mending ? finding : finding.withMends(List.of());
        Finding left = finding.severity() == Severity.NOTE ? bare
                : excuse.map(one -> Dispensation.note(bare, one)).orElse(bare);
        findings.add(new Basis(left, card, subject));
    }

    /** Whether a dispensation covers what is said of this card and subject. */
    boolean excused(Id card, Id subject) {
        return Dispensation.fromRule(situation, ruling, card, subject).isPresent();
    }

    /** Takes a breach. */
    void breach(Id card, Id subject, String code, Id at, Optional<Id> rule, String message, List<Mend> mends) {
        add(card, subject, new Finding(code, Severity.BREACH, at, rule, message, mends));
    }
}
