package org.cantonment.rules.api;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;

/**
 * What a check is asked.
 *
 * @param list the list, read and with names resolved; what could not be read is not in it
 * @param books the rule set and its layers, as written
 * @param occasion the list's era and round, so far as they are known
 * @param limit the limit of points, if there is one
 * @param used the points of the whole list
 * @param points the points of each entry with all its copies, without what stands in it, by the entry's id
 * @param settings a value for every parameter, written or preset, by its name
 * @param cancel says when the answer is no longer wanted
 */
public record Question(ForceList list, List<RuleSet> books, Occasion occasion, OptionalInt limit, long used,
        Map<Id, Long> points, Map<String, SettingValue> settings, CancelToken cancel) {

    public Question {
        books = List.copyOf(books);
        points = Map.copyOf(points);
        settings = Map.copyOf(settings);
    }
}
