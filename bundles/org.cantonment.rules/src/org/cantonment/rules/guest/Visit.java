package org.cantonment.rules.guest;

import java.util.List;
import java.util.Map;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.rules.api.Question;

/** One check asked about one list. */
record Visit(CheckUse use, Arrival arrival, Question question, Map<String, SettingValue> settings,
        AnswerReader reader) implements Call<List<Finding>> {

    @Override
    public List<Finding> make(CancelToken stop) throws Nonsense {
        List<Finding> answer = ask(stop);
        if (arrival.twice() && !ask(stop).equals(answer)) {
            throw new Nonsense("answered the same question in two ways");
        }
        return answer;
    }

    private List<Finding> ask(CancelToken stop) throws Nonsense {
        return reader.read(use, arrival.known(), arrival.check.check(question.with(settings, stop)));
    }
}
