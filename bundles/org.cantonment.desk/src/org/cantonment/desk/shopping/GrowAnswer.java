package org.cantonment.desk.shopping;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.Player;
import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.plan.Plan;

/**
 * What to buy before which round.
 *
 * @param shopper for whom
 * @param shops   where
 * @param steps   the rounds, in their order
 * @param saved   whether what is left of a budget may be spent later
 * @param why     who says what may be spent, in words
 * @param bench   what can be built before each round, as the end of a sentence; may be empty
 * @param growth  the plan, or what it is short of
 * @param stopped whether the search was ended before it was through
 */
public record GrowAnswer(Shopper shopper, Shops shops, List<Step> steps, boolean saved, String why, String bench,
        Growth growth, boolean stopped) {
    public GrowAnswer {
        steps = List.copyOf(steps);
    }

    /** The plan, if there is one for any round. */
    public Optional<Plan> plan() {
        return growth.answer().plan().filter(plan -> steps.stream().anyMatch(step -> step.out().isEmpty()));
    }

    /** Whether any list was composed. */
    public boolean composed() {
        return steps.stream().anyMatch(Step::composed);
    }

    /** Whether there is a plan for all rounds, and all its lists are legal. */
    public boolean complete() {
        return plan().isPresent() && steps.stream().allMatch(step -> step.breaches().isEmpty() && step.out().isEmpty());
    }

    /** The lists that were composed, as books: their texts by the names of files that they may be written into. */
    public Map<String, String> books(Player player) {
        Map<String, String> books = new LinkedHashMap<>();
        steps.stream().filter(step -> !step.book().isEmpty()).forEach(step ->
                books.put(player.id().name().toLowerCase(Locale.ROOT) + "-" + step.round() + ".list", step.book()));
        return books;
    }
}
