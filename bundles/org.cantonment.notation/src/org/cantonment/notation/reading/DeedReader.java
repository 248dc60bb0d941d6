package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.campaign.Clauses;
import org.cantonment.domain.campaign.CountTaken;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Doing;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.State;
import org.cantonment.model.book.Line;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Counted;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.reading.Under.Taken;

/** Reads who did what, with the deeds that belong to it. */
final class DeedReader {

    /** Remembers the sentences of one week, round or game, to notice one that stands there twice. */
    final class Sentences {

        private record Sentence(Id who, Doing doing, Clauses clauses) {
        }

        private final Set<Sentence> said = new HashSet<>();
        private final List<Deed> deeds = new ArrayList<>();

        /** Reads a deed in; one that was said before, with no word that it happened again, is asked about. */
        void add(org.cantonment.model.campaign.Deed deed, Id id) {
            Optional<Deed> read = read(deed, deed.getLines(), id);
            read.filter(one -> once(deed, one)).ifPresent(deeds::add);
        }

        List<Deed> deeds() {
            return deeds;
        }

        private boolean once(org.cantonment.model.campaign.Deed deed, Deed read) {
            boolean fresh = said.add(new Sentence(read.who(), read.doing(), withoutAgain(read.clauses())));
            if (!fresh && !read.clauses().again()) {
                reading.problem(deed, CampaignPackage.Literals.DEED__ACT, Severity.BREACH, Codes.DEED_TWICE,
                        "The same sentence stands above and is counted once; if it happened again, end it with"
                                + " 'again'.");
                return false;
            }
            return true;
        }

        private Clauses withoutAgain(Clauses all) {
            return !all.again() ? all : new Clauses(all.exchange(), all.from(), all.on(), all.known(), all.at(),
                    all.untilWeek(), all.round(), all.session(), all.state(), false, all.late(), all.because());
        }
    }

    private final Reading reading;
    private final Phrases phrases;
    private final DoingReader doings;

    DeedReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
        doings = new DoingReader(reading);
    }

    Sentences sentences() {
        return new Sentences();
    }

    /**
     * @param lines what stands under the deed
     * @return the deed; empty if it names nobody or nothing that is known
     */
    Optional<Deed> read(org.cantonment.model.campaign.Deed deed, List<Line> lines, Id id) {
        Clauses clauses = ClauseReader.read(reading, phrases, deed.getClauses());
        Optional<Doing> doing = doings.read(deed);
        Sentences inner = new Sentences();
        List<Held> counted = new ArrayList<>();
        boolean counts = deed.getAct() instanceof org.cantonment.model.campaign.CountTaken;
        Under.each(reading, id, lines, "what was done", (line, at) -> {
            if (line instanceof org.cantonment.model.campaign.Deed belongs) {
                inner.add(belongs, at);
                return Taken.WITH_LINES;
            }
            if (counts && line instanceof Counted more) {
                counted(more).ifPresent(counted::add);
                return Taken.ALONE;
            }
            return Taken.NO;
        });
        return Reading.ref(deed.getWho()).flatMap(who -> withCounted(doing, counted)
                .map(done -> new Deed(id, who, done, clauses, inner.deeds(), Reading.notes(lines))));
    }

    /** What is counted may go on below, line by line. */
    private static Optional<Doing> withCounted(Optional<Doing> doing, List<Held> more) {
        if (more.isEmpty()) {
            return doing;
        }
        List<Held> all = new ArrayList<>();
        if (doing.orElse(null) instanceof CountTaken first) {
            all.addAll(first.things());
        }
        all.addAll(more);
        return Optional.of(new CountTaken(all));
    }

    private static Optional<Held> counted(Counted line) {
        return Reading.ref(line.getWhat()).map(what -> new Held(Reading.number(line.getCount(), 1), what,
                Words.of(State.class, line.getState())));
    }
}
