package org.cantonment.rules.compile;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InEras;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.Moment;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.OfRound;
import org.cantonment.domain.common.OfWeek;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.When;

/** Says in words when something holds. */
final class TimeWords {

    private final Names names;

    TimeWords(Names names) {
        this.names = names;
    }

    String of(Validity when) {
        StringBuilder words = new StringBuilder();
        for (When condition : when.conditions()) {
            words.append(words.length() == 0 ? "" : " ").append(of(condition));
        }
        return words.toString();
    }

    private String of(When condition) {
        if (condition instanceof InRounds in) {
            return in.first() == in.last() ? "in round " + in.first() : "in rounds " + in.first() + " to " + in.last();
        }
        if (condition instanceof InEras in) {
            return "in " + list(in.eras());
        }
        Reach reach = (Reach) condition;
        String from = reach.from().map(moment -> "from " + of(moment)).orElse("");
        String to = reach.to().map(moment -> "to " + of(moment)).orElse("");
        return from.isEmpty() ? to : to.isEmpty() ? from : from + ' ' + to;
    }

    private String of(Moment moment) {
        if (moment instanceof OnDate on) {
            return on.date().toString();
        }
        if (moment instanceof OfRound round) {
            return "round " + round.number();
        }
        if (moment instanceof OfWeek week) {
            return "week " + week.number();
        }
        return names.title(((OfEra) moment).era());
    }

    private String list(List<Id> eras) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < eras.size(); i++) {
            words.append(i == 0 ? "" : i == eras.size() - 1 ? " or " : ", ").append(names.title(eras.get(i)));
        }
        return words.toString();
    }
}
