package org.cantonment.rules.guest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;

/** Looks an answer over before it is shown to anybody. */
final class AnswerReader {

    private static final Pattern CODE = Pattern.compile("[a-z][a-z0-9-]*(\\.[a-z0-9-]+)*");

    private final CheckUse use;
    private final Set<Id> places = new HashSet<>();

    AnswerReader(CheckUse use, ForceList list) {
        this.use = use;
        places.add(list.id());
        gather(list.body());
        list.contingents().forEach(contingent -> {
            places.add(contingent.id());
            gather(contingent.body());
        });
    }

    private void gather(Body body) {
        List<Entry> entries = new ArrayList<>(body.entries());
        entries.addAll(body.supports());
        for (Entry entry : entries) {
            places.add(entry.id());
            gather(entry.body());
        }
    }

    /** The findings under their shown codes, as grave as the campaign wishes at most, in order. */
    List<Finding> read(List<Finding> answer) throws Nonsense {
        if (answer == null) {
            throw new Nonsense("handed back nothing at all");
        }
        List<Finding> read = new ArrayList<>();
        for (Finding finding : answer) {
            read.add(read(finding));
        }
        read.sort(null);
        return List.copyOf(read);
    }

    private Finding read(Finding finding) throws Nonsense {
        if (finding == null || finding.severity() == null || finding.rule() == null) {
            throw new Nonsense("handed back a finding with parts missing");
        }
        if (finding.code() == null || !CODE.matcher(finding.code()).matches()) {
            throw new Nonsense("handed back a finding with the code '" + finding.code() + "', which is none");
        }
        if (finding.message() == null || finding.message().isBlank()) {
            throw new Nonsense("handed back a finding without a message");
        }
        if (!places.contains(finding.at())) {
            throw new Nonsense("handed back a finding at " + finding.at() + ", which is no place in the list");
        }
        Severity most = use.severity().orElse(finding.severity());
        Severity severity = finding.severity().compareTo(most) < 0 ? most : finding.severity();
        return new Finding("check." + finding.code(), severity, finding.at(),
                Optional.of(finding.rule().orElse(use.id())), finding.message(), finding.mends());
    }
}
