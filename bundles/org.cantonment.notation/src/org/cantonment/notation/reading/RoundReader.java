package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.PlayDates;
import org.cantonment.domain.campaign.PointsLimit;
import org.cantonment.domain.campaign.Published;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.RoundBudget;
import org.cantonment.domain.campaign.Session;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.model.book.Line;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Deed;
import org.cantonment.model.campaign.Due;
import org.cantonment.model.campaign.EraOf;
import org.cantonment.model.campaign.LikenessLevel;
import org.cantonment.model.campaign.PaintShare;
import org.cantonment.model.campaign.TurnoutShare;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.reading.Under.Taken;

/** Reads one round: its dates, limits and evenings, and who meets whom. */
final class RoundReader {

    private static final Comparator<Session> IN_TIME =
            Comparator.<Session, LocalDate>comparing(session -> session.date().orElse(LocalDate.MAX))
                    .thenComparing(session -> session.time().orElse(LocalTime.MAX));

    private final Reading reading;
    private final Phrases phrases;
    private final org.cantonment.model.campaign.Round round;
    private final LikenessReader likenesses;
    private final DeedReader.Sentences deeds;
    private final Dues dues;
    private final List<Id> eras = new ArrayList<>();
    private final List<PointsLimit> limits = new ArrayList<>();
    private final List<Session> sessions = new ArrayList<>();
    private final List<Fact> likenessFacts = new ArrayList<>();
    private final Said<PlayDates> play;
    private final Said<Level> likeness;
    private final Said<Integer> turnout;
    private final Said<Integer> painted;
    private final Said<RoundBudget> budget;
    private final Said<Published> published;

    RoundReader(Reading reading, Phrases phrases, DeedReader deedReader, org.cantonment.model.campaign.Round round) {
        this.reading = reading;
        this.phrases = phrases;
        this.round = round;
        likenesses = new LikenessReader(reading, phrases);
        deeds = deedReader.sentences();
        dues = new Dues(reading, phrases);
        play = new Said<>(reading);
        likeness = new Said<>(reading);
        turnout = new Said<>(reading);
        painted = new Said<>(reading);
        budget = new Said<>(reading);
        published = new Said<>(reading);
    }

    Round read(Id id, int number) {
        Under.each(reading, id, round.getLines(), "round " + number, this::take);
        dues.order();
        sessions.sort(IN_TIME);
        return new Round(id, number, Reading.text(round.getLabel()), eras, limits, dues.read(), play.value(), sessions,
                likeness.value(), Said.number(turnout), Said.number(painted), budget.value(), published.value(),
                likenessFacts, deeds.deeds(), Reading.notes(round.getLines()));
    }

    private Taken take(Line line, Id id) {
        if (line instanceof Deed deed) {
            deeds.add(deed, id);
            return Taken.WITH_LINES;
        }
        if (line instanceof EraOf of) {
            eras.addAll(Reading.refs(of.getEras()));
        } else if (line instanceof org.cantonment.model.campaign.PointsLimit limit) {
            limit(limit, id).ifPresent(limits::add);
        } else if (line instanceof Due due) {
            dues.take(due, id);
        } else if (line instanceof org.cantonment.model.campaign.PlayDates dates) {
            play.say(dates, play(dates, id));
        } else if (line instanceof org.cantonment.model.campaign.Session session) {
            sessions.add(session(session));
        } else {
            return takeShare(line, id);
        }
        return Taken.ALONE;
    }

    private Taken takeShare(Line line, Id id) {
        if (line instanceof LikenessLevel level) {
            likeness.say(level, Words.of(Level.class, level.getLevel()));
        } else if (line instanceof TurnoutShare share) {
            turnout.say(share, Optional.ofNullable(share.getPercent()).map(
                    percent -> reading.percent(share, CampaignPackage.Literals.TURNOUT_SHARE__PERCENT, percent)));
        } else if (line instanceof PaintShare share) {
            painted.say(share, Optional.ofNullable(share.getPercent()).map(
                    percent -> reading.percent(share, CampaignPackage.Literals.PAINT_SHARE__PERCENT, percent)));
        } else if (line instanceof org.cantonment.model.campaign.RoundBudget each) {
            budget.say(each, phrases.money(each.getMoney()).map(money -> new RoundBudget(id, money, each.isSaved())));
        } else if (line instanceof org.cantonment.model.campaign.Published out) {
            published.say(out, Optional.of(new Published(id,
                    phrases.date(out, CampaignPackage.Literals.PUBLISHED__DATE, out.getDate()),
                    Optional.ofNullable(out.getSeal()))));
        } else {
            return likenesses.take(line, id, likenessFacts);
        }
        return Taken.ALONE;
    }

    /** A limit for somebody nobody knows would become one for all, so it is left out. */
    private Optional<PointsLimit> limit(org.cantonment.model.campaign.PointsLimit limit, Id id) {
        return limit.getPoints() == null || Things.lost(limit.getFor()) ? Optional.empty()
                : Optional.of(new PointsLimit(id, limit.getPoints(), Reading.refs(limit.getFor())));
    }

    private Optional<PlayDates> play(org.cantonment.model.campaign.PlayDates dates, Id id) {
        Optional<LocalDate> from = phrases.date(dates, CampaignPackage.Literals.PLAY_DATES__FROM, dates.getFrom());
        Optional<LocalDate> to = phrases.date(dates, CampaignPackage.Literals.PLAY_DATES__TO, dates.getTo());
        if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
            reading.problem(dates, CampaignPackage.Literals.PLAY_DATES__TO, Severity.CAUTION, Codes.ROUND_ORDER,
                    "Play would end on " + to.get() + ", before it begins on " + from.get() + ".");
            return Optional.of(new PlayDates(id, from.get(), from.get()));
        }
        return from.map(first -> new PlayDates(id, first, to.orElse(first)));
    }

    private Session session(org.cantonment.model.campaign.Session session) {
        return new Session(reading.inRound((org.cantonment.model.campaign.Round) session.eContainer(), session),
                Reading.label(session),
                phrases.date(session, CampaignPackage.Literals.SESSION__DATE, session.getDate()),
                phrases.time(session, CampaignPackage.Literals.SESSION__TIME, session.getTime()));
    }
}
