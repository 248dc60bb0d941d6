package org.cantonment.notation.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.Bonus;
import org.cantonment.domain.campaign.Chain;
import org.cantonment.domain.campaign.Reward;
import org.cantonment.domain.campaign.Score;
import org.cantonment.domain.campaign.Scoring;
import org.cantonment.domain.campaign.Struckout;
import org.cantonment.domain.campaign.TieStep;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.book.Line;
import org.cantonment.model.campaign.Award;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Ties;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.reading.Under.Taken;

/** Reads one scheme of points and tie-breaks. */
final class ScoringReader {

    private final Reading reading;
    private final Phrases phrases;
    private final org.cantonment.model.campaign.Scoring scoring;
    private final Map<Reward, Score> scores = new EnumMap<>(Reward.class);
    private final List<Bonus> bonuses = new ArrayList<>();
    private final List<TieStep> ties = new ArrayList<>();
    private final Said<Chain> chain;
    private final Said<Struckout> struckout;

    ScoringReader(Reading reading, Phrases phrases, org.cantonment.model.campaign.Scoring scoring) {
        this.reading = reading;
        this.phrases = phrases;
        this.scoring = scoring;
        chain = new Said<>(reading);
        struckout = new Said<>(reading);
    }

    Scoring read() {
        Id id = reading.id(scoring);
        Under.each(reading, id, scoring.getLines(), Under.words("scoring", scoring), this::take);
        return new Scoring(id, Reading.label(scoring), List.copyOf(scores.values()), bonuses, ties,
                chain.value().orElse(Chain.UNSAID), struckout.value(), Reading.notes(scoring.getLines()));
    }

    private Taken take(Line line, Id id) {
        if (line instanceof Award award) {
            award.getScores().forEach(this::score);
        } else if (line instanceof org.cantonment.model.campaign.Bonus bonus) {
            bonus(bonus, id).ifPresent(bonuses::add);
        } else if (line instanceof Ties by) {
            steps(by);
        } else if (line instanceof org.cantonment.model.campaign.Chain goes) {
            chain.say(goes, Optional.of(goes.isRestarts() ? Chain.RESTARTS : Chain.GOES_ON));
        } else if (line instanceof org.cantonment.model.campaign.Struckout out) {
            struckout.say(out, Optional.ofNullable(out.getPercent()).map(percent -> new Struckout(id,
                    reading.percent(out, CampaignPackage.Literals.STRUCKOUT__PERCENT, percent), out.isStruck())));
        } else {
            return Taken.NO;
        }
        return Taken.ALONE;
    }

    private void score(org.cantonment.model.campaign.Score score) {
        Optional<Reward> reward = Words.of(Reward.class, score.getOutcome());
        Optional<BigDecimal> points = phrases.decimal(score, CampaignPackage.Literals.SCORE__POINTS, score.getPoints());
        if (reward.isEmpty() || points.isEmpty()) {
            return;
        }
        if (scores.containsKey(reward.get())) {
            reading.problem(score, null, Severity.BREACH, Codes.TWICE, "This is said twice here; the first holds.");
            return;
        }
        scores.put(reward.get(), new Score(reward.get(), points.get()));
    }

    /** A cap that cannot be read would leave the bonus without one, so the line is left out. */
    private Optional<Bonus> bonus(org.cantonment.model.campaign.Bonus bonus, Id id) {
        Optional<BigDecimal> points = phrases.decimal(bonus, CampaignPackage.Literals.BONUS__POINTS, bonus.getPoints());
        Optional<BigDecimal> most = phrases.decimal(bonus, CampaignPackage.Literals.BONUS__MOST, bonus.getMost());
        int per = reading.atLeastOne(bonus, CampaignPackage.Literals.BONUS__COUNT, bonus.getCount());
        Optional<Id> tally = Reading.ref(bonus.getTally());
        boolean lost = bonus.getMost() != null && most.isEmpty();
        return points.isEmpty() || tally.isEmpty() || lost ? Optional.empty()
                : Optional.of(new Bonus(id, points.get(), per, tally.get(), most));
    }

    private void steps(Ties by) {
        for (org.cantonment.model.campaign.TieStep step : by.getSteps()) {
            if (step.getName() != null) {
                ties.add(new TieStep(step.getName(), Settings.read(phrases, step.getSettings())));
            }
        }
    }
}
