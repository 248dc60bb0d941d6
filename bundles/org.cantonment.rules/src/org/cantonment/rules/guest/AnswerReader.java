package org.cantonment.rules.guest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Set;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Contingent;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Question;

/** Looks answers about one list over before they are shown to anybody. */
final class AnswerReader {

    private static final int MOST = 1_000;
    private static final int LONGEST = 2_000;

    private final Set<Id> places = new HashSet<>();
    private final MendReader mends;

    AnswerReader(Question question) {
        Set<Id> entries = new HashSet<>();
        question.entries().keySet().forEach(entry -> entries.add(entry.id()));
        places.addAll(entries);
        places.add(question.list().id());
        question.list().contingents().stream().map(Contingent::id).forEach(places::add);
        mends = new MendReader(entries, places);
    }

    /** The findings under their shown codes, as grave as the campaign's line says, in order. */
    List<Finding> read(CheckUse use, KnownCheck check, List<Finding> answer) throws Nonsense {
        if (answer == null) {
            throw new Nonsense("handed back nothing at all");
        }
        if (answer instanceof RandomAccess && answer.isEmpty()) {
            return List.of();
        }
        List<Finding> copy = Foreign.copy(answer, MOST);
        if (copy == null) {
            throw new Nonsense("handed back an empty finding, or more than " + MOST);
        }
        List<Finding> read = new ArrayList<>(copy.size());
        for (Finding finding : copy) {
            read.add(read(use, check, finding));
        }
        read.sort(null);
        return List.copyOf(read);
    }

    private Finding read(CheckUse use, KnownCheck check, Finding finding) throws Nonsense {
        FindingKind kind = kind(check, finding.code());
        if (finding.severity() != kind.severity()) {
            throw new Nonsense("handed back a finding '" + kind.code() + "' as " + finding.severity()
                    + ", which it had declared as " + kind.severity());
        }
        if (finding.message() == null || finding.message().isBlank() || finding.message().length() > LONGEST) {
            throw new Nonsense("handed back a finding without a message, or with one of more than " + LONGEST
                    + " letters");
        }
        if (finding.at() == null || !places.contains(finding.at())) {
            throw new Nonsense("handed back a finding at " + finding.at() + ", which is no place in the list");
        }
        mends.read(finding.mends());
        return new Finding(check.shown(kind), severity(use, kind), finding.at(), Optional.of(use.id()),
                finding.message(), finding.mends());
    }

    private static FindingKind kind(KnownCheck check, String code) throws Nonsense {
        return check.findings().stream().filter(kind -> kind.code().equals(code)).findFirst()
                .orElseThrow(() -> new Nonsense("handed back a finding with the code '"
                        + Misdeeds.shortened(String.valueOf(code)) + "', which it had not declared"));
    }

    /** The campaign's line decides how grave the check's breaches and cautions are; a note is none of them. */
    private static Severity severity(CheckUse use, FindingKind kind) {
        return kind.severity() == Severity.NOTE ? Severity.NOTE : use.severity().orElse(kind.severity());
    }
}
