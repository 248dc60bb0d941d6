package org.cantonment.stock.ledger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.FundCap;
import org.cantonment.domain.campaign.Rebuilds;
import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;

/**
 * What to rebuild so that an army lacks the least. A piece is a piece, so the cheapest are rebuilt first; nothing else
 * could bring back more.
 *
 * @param rebuilt how many of each type
 * @param costs what that takes out of each fund
 * @param lacking how many are short all the same, by type
 */
public record Rebuilding(Map<Id, Integer> rebuilt, Map<Id, Integer> costs, Map<Id, Integer> lacking) {

    private record Choice(Id type, Rebuilds line) {
    }

    public Rebuilding {
        rebuilt = Collections.unmodifiableMap(new TreeMap<>(rebuilt));
        costs = Collections.unmodifiableMap(new TreeMap<>(costs));
        lacking = Collections.unmodifiableMap(new TreeMap<>(lacking));
    }

    /** How many are short in all, however much is rebuilt. */
    public int shortOf() {
        return lacking.values().stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * Asks.
     *
     * @param wanted how many of each type are to come back
     */
    public static Rebuilding of(Campaign campaign, Roll roll, Map<Id, Integer> wanted, Occasion when) {
        Map<Id, Integer> room = new TreeMap<>(roll.funds());
        caps(campaign, when).forEach((fund, most) -> room.computeIfPresent(fund, (id, left) -> Math.min(left, most)));
        Map<Id, Integer> rebuilt = new TreeMap<>();
        Map<Id, Integer> costs = new TreeMap<>();
        Map<Id, Integer> lacking = new TreeMap<>(wanted);
        for (Choice choice : choices(campaign, wanted, when)) {
            Id fund = choice.line().fund();
            int each = choice.line().amount();
            int most = Math.min(lacking.get(choice.type()), roll.out(choice.type()).lost() - rebuilt.getOrDefault(choice.type(), 0));
            int can = each == 0 ? most : Math.min(most, Math.max(0, room.getOrDefault(fund, 0)) / each);
            if (can > 0) {
                rebuilt.merge(choice.type(), can, Integer::sum);
                costs.merge(fund, can * each, Integer::sum);
                room.merge(fund, -can * each, Integer::sum);
                lacking.merge(choice.type(), -can, Integer::sum);
            }
        }
        lacking.values().removeIf(count -> count == 0);
        return new Rebuilding(rebuilt, costs, lacking);
    }

    private static List<Choice> choices(Campaign campaign, Map<Id, Integer> wanted, Occasion when) {
        List<Rebuilds> lines = new ArrayList<>();
        campaign.casualties().forEach(card -> lines.addAll(card.rebuilds()));
        campaign.funds().forEach(fund -> lines.addAll(fund.rebuilds()));
        List<Choice> choices = new ArrayList<>();
        for (Id type : wanted.keySet()) {
            lines.stream().filter(line -> line.what().contains(type) && line.when().covers(when, EraOrder.NONE))
                    .forEach(line -> choices.add(new Choice(type, line)));
        }
        choices.sort(Comparator.comparingInt((Choice choice) -> choice.line().amount()).thenComparing(Choice::type)
                .thenComparing(choice -> choice.line().id()));
        return choices;
    }

    private static Map<Id, Integer> caps(Campaign campaign, Occasion when) {
        List<FundCap> caps = new ArrayList<>();
        campaign.casualties().forEach(card -> caps.addAll(card.caps()));
        campaign.funds().forEach(fund -> caps.addAll(fund.caps()));
        Map<Id, Integer> least = new TreeMap<>();
        caps.stream().filter(cap -> cap.when().covers(when, EraOrder.NONE))
                .forEach(cap -> least.merge(cap.fund(), cap.amount(), Math::min));
        return least;
    }
}
