package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cantonment.desk.judging.Cases;
import org.cantonment.desk.judging.ListCase;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.judging.Stores;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.rules.Requirements;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.ledger.Rebuilding;
import org.cantonment.stock.ledger.Roll;

/**
 * What the roll leaves of a list. The notation has no line for what an army was enrolled with, so it is what the greatest of
 * the player's lists wanted, up to the one asked about; a need that may be filled by several types is counted for the first.
 *
 * @param rows  the types of which some are out and the list wants any
 * @param funds what is in each fund, in words: "16 Lake crowns"; empty without funds
 * @param costs what the rebuilding takes, in words
 */
public record RollRows(List<RollRow> rows, String funds, String costs) {
    public RollRows {
        rows = List.copyOf(rows);
    }

    /** How many pieces the list may not field, if nothing is rebuilt. */
    public int lacking() {
        return rows.stream().mapToInt(RollRow::lacking).sum();
    }

    static RollRows of(Meanings meanings, Catalogue catalogue, Campaign campaign, ListCase about, AsOf asOf) {
        ForceList list = about.list();
        Id player = list.player().orElseThrow();
        Roll roll = Stores.roll(meanings, Optional.of(campaign)).of(player, list.round(), asOf);
        Map<Id, Integer> wanted = wanted(catalogue, about);
        Map<Id, Integer> enrolled = new TreeMap<>(wanted);
        Cases cases = Cases.of(meanings);
        meanings.listsOf(player).stream().filter(other -> other.round().isPresent() && list.round().isPresent()
                && other.round().getAsInt() < list.round().getAsInt()).forEach(other ->
                        wanted(catalogue, cases.of(other)).forEach((type, count) -> enrolled.merge(type, count, Math::max)));
        Map<Id, Integer> back = new TreeMap<>();
        wanted.forEach((type, count) -> {
            int lacking = count - roll.left(type, enrolled.get(type));
            if (lacking > 0) {
                back.put(type, lacking);
            }
        });
        Rebuilding plan = Rebuilding.of(campaign, roll, back, about.occasion());
        List<RollRow> rows = new ArrayList<>();
        wanted.forEach((type, count) -> {
            Roll.Out out = roll.out(type);
            if (out.all() > 0) {
                rows.add(new RollRow(catalogue.title(type), enrolled.get(type), out.lost(), out.wounded(), count,
                        plan.rebuilt().getOrDefault(type, 0)));
            }
        });
        return new RollRows(rows, money(campaign, roll.funds()), money(campaign, plan.costs()));
    }

    private static String money(Campaign campaign, Map<Id, Integer> funds) {
        return campaign.funds().stream().filter(fund -> funds.containsKey(fund.id()))
                .map(fund -> funds.get(fund.id()) + " " + fund.title()).collect(Collectors.joining(" and "));
    }

    private static Map<Id, Integer> wanted(Catalogue catalogue, ListCase about) {
        Map<Id, Integer> wanted = new LinkedHashMap<>();
        about.ruling().ifPresent(ruling -> {
            for (Requirement need : Requirements.of(ruling, about.list(), about.situation().contingents())) {
                catalogue.meant(need.anyOf().get(0)).stream().filter(type -> !catalogue.isItem(type)).findFirst()
                        .ifPresent(type -> wanted.merge(type, need.count(), Integer::sum));
            }
        });
        return wanted;
    }
}
