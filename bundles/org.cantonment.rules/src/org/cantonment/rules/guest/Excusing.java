package org.cantonment.rules.guest;

import java.util.List;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.view.Dispensation;

/** Makes notes of what dispensations cover of that which checks of others say of one list. */
record Excusing(Circumstances about) {

    List<Finding> of(CheckUse use, List<Finding> findings) {
        return about.situation().excuses().isEmpty() ? findings
                : findings.stream().map(finding -> excused(use, finding)).sorted().toList();
    }

    private Finding excused(CheckUse use, Finding finding) {
        return finding.severity() == Severity.NOTE ? finding
                : Dispensation.fromCheck(about.situation(), about.ruling(), use.name(), about.list().takenAt(finding.at()))
                        .map(excuse -> Dispensation.note(finding, excuse)).orElse(finding);
    }
}
