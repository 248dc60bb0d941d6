package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.Due;
import org.cantonment.domain.campaign.DueWhat;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.notation.form.Codes;

/** What is due in one round, and whether it comes in its order: lists, reveal, results, protests. */
final class Dues {

    private record Said(org.cantonment.model.campaign.Due line, Due due) {
    }

    private final Reading reading;
    private final Phrases phrases;
    private final Map<DueWhat, Said> dues = new EnumMap<>(DueWhat.class);

    Dues(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
    }

    void take(org.cantonment.model.campaign.Due line, Id id) {
        Optional<LocalDate> date = phrases.date(line, CampaignPackage.Literals.DUE__DATE, line.getDate());
        Optional<LocalTime> time = phrases.time(line, CampaignPackage.Literals.DUE__TIME, line.getTime());
        Optional<DueWhat> what = Words.of(DueWhat.class, line.getWhat());
        if (what.isEmpty() || date.isEmpty()) {
            return;
        }
        if (dues.containsKey(what.get())) {
            reading.problem(line, null, Severity.BREACH, Codes.TWICE, "This is said twice here; the first holds.");
            return;
        }
        dues.put(what.get(), new Said(line, new Due(id, what.get(), date.get(), time)));
    }

    /** Makes a finding at every date that comes before one which it should follow. */
    void order() {
        Said before = null;
        for (Said next : dues.values()) {
            if (before != null && isBefore(next.due(), before.due())) {
                reading.problem(next.line(), CampaignPackage.Literals.DUE__DATE, Severity.CAUTION, Codes.ROUND_ORDER,
                        capital(next.due().what()) + " would be due before " + word(before.due().what()) + '.');
            } else {
                before = next;
            }
        }
    }

    private static boolean isBefore(Due one, Due other) {
        if (!one.date().equals(other.date())) {
            return one.date().isBefore(other.date());
        }
        return one.time().isPresent() && other.time().isPresent() && one.time().get().isBefore(other.time().get());
    }

    private static String word(DueWhat what) {
        return what == DueWhat.REVEAL ? "the reveal" : what.name().toLowerCase(Locale.ROOT);
    }

    private static String capital(DueWhat what) {
        String word = word(what);
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    /** @return what is due, in its right order */
    List<Due> read() {
        List<Due> read = new ArrayList<>(dues.size());
        dues.values().forEach(said -> read.add(said.due()));
        return read;
    }
}
