package org.cantonment.rules.guest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.Dispensation;

/** Makes notes of what dispensations cover of that which checks of others say of one list. */
final class Excusing {
    private final Circumstances about;
    private Map<Id, Id> units;

    Excusing(Circumstances about) {
        this.about = about;
    }

    List<Finding> of(CheckUse use, List<Finding> findings) {
        return about.situation().excuses().isEmpty() ? findings
                : findings.stream().map(finding -> excused(use, finding)).sorted().toList();
    }

    private Finding excused(CheckUse use, Finding finding) {
        return finding.severity() == Severity.NOTE ? finding
                : Dispensation.fromCheck(about.situation(), about.ruling(), use.name(), unit(finding.at()))
                        .map(excuse -> Dispensation.note(finding, excuse)).orElse(finding);
    }

    private Optional<Id> unit(Id place) {
        if (units == null) {
            units = new HashMap<>();
            ForceList list = about.list();
            take(list.body());
            list.contingents().forEach(contingent -> take(contingent.body()));
        }
        return Optional.ofNullable(units.get(place));
    }

    private void take(Body body) {
        List.of(body.entries(), body.supports()).forEach(entries -> entries.forEach(entry -> {
            units.put(entry.id(), entry.what());
            take(entry.body());
        }));
    }
}
