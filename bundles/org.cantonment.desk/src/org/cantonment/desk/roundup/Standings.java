package org.cantonment.desk.roundup;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Reward;
import org.cantonment.domain.campaign.Score;
import org.cantonment.domain.campaign.Scoring;
import org.cantonment.domain.common.Id;

/**
 * Won, drawn and lost by player, with points where the campaign says what a game is worth. No scheme is made up: without
 * a scoring card games are only counted. Ties are not broken here, bonuses are not counted.
 */
final class Standings {
    private final Map<Reward, BigDecimal> worth;
    private final Map<Id, int[]> counts = new LinkedHashMap<>();
    private final Map<Id, BigDecimal> points = new HashMap<>();

    private Standings(Optional<Scoring> scoring) {
        if (scoring.isEmpty()) {
            worth = null;
        } else {
            worth = new EnumMap<>(Reward.class);
            for (Score score : scoring.get().scores()) {
                worth.put(score.reward(), score.points());
            }
        }
    }

    /** The table: most points first, or most won and then drawn where there are none; equals by name. */
    static List<Standing> of(Season season, Bookings bookings) {
        Standings all = new Standings(season.campaign().scorings().stream().findFirst());
        for (Player player : season.campaign().players()) {
            all.counts.put(player.id(), new int[3]);
        }
        bookings.games().forEach(all::count);
        bookings.rests().stream().filter(rest -> rest.week() > 0)
                .forEach(rest -> all.award(rest.player(), Reward.BYE));
        return all.table(season);
    }

    private void count(Booked game) {
        boolean drawn = game.kind() == Booked.Kind.DRAWN;
        row(game.first())[drawn ? 1 : 0]++;
        row(game.second())[drawn ? 1 : 2]++;
        Reward first = switch (game.kind()) {
            case WON -> Reward.WIN;
            case DRAWN -> Reward.DRAW;
            case FORFEITED -> Reward.FORFEIT;
        };
        award(game.first(), first);
        award(game.second(), drawn ? Reward.DRAW : Reward.LOSS);
    }

    private int[] row(Id player) {
        return counts.computeIfAbsent(player, p -> new int[3]);
    }

    private void award(Id player, Reward reward) {
        if (worth != null && worth.containsKey(reward)) {
            points.merge(player, worth.get(reward), BigDecimal::add);
        }
    }

    private List<Standing> table(Season season) {
        List<Standing> table = new ArrayList<>();
        counts.forEach((player, n) -> table.add(new Standing(player, n[0], n[1], n[2],
                worth == null ? Optional.empty() : Optional.of(points.getOrDefault(player, BigDecimal.ZERO)))));
        table.sort(Comparator.comparing((Standing s) -> s.points().orElse(BigDecimal.ZERO)).reversed()
                .thenComparing(Comparator.comparingInt(Standing::won).reversed())
                .thenComparing(Comparator.comparingInt(Standing::drawn).reversed())
                .thenComparing((Standing s) -> season.name(s.player())).thenComparing(Standing::player));
        return table;
    }
}
