package org.cantonment.rules.guest;

import java.util.HashMap;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.muster.Tally;
import org.cantonment.rules.muster.TallyLine;

/** Puts what is known around a list into a question; settings come later, check by check. */
final class Questions {

    private Questions() {
    }

    static Question of(Circumstances about) {
        Map<Id, Long> points = new HashMap<>();
        gather(about.verdict().tally(), points);
        about.verdict().contingents().forEach(tally -> gather(tally, points));
        return Question.about(about.list()).under(about.books()).at(about.ruling().occasion())
                .to(about.situation().points()).costs(about.verdict().points(), points)
                .needs(Requirements.of(about.ruling(), about.list(), about.situation().contingents()))
                .after(about.earlier()).in(about.campaign()).from(about.shelves()).ask();
    }

    private static void gather(Tally tally, Map<Id, Long> points) {
        for (TallyLine line : tally.lines()) {
            points.put(line.entry(), line.points());
        }
    }
}
