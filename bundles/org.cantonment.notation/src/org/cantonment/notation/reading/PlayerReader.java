package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Id;
import org.cantonment.model.book.Line;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.PlayerFact;
import org.cantonment.model.campaign.PlayerSide;
import org.cantonment.notation.reading.Under.Taken;

/** Reads one player. */
final class PlayerReader {

    private final Reading reading;
    private final org.cantonment.model.campaign.Player player;
    private final Said<Id> side;
    private final Said<Id> club;
    private final Said<Integer> rated;
    private final Said<Integer> joins;
    private final Said<Integer> leaves;
    private final List<String> evenings = new ArrayList<>();
    private boolean newcomer;

    PlayerReader(Reading reading, org.cantonment.model.campaign.Player player) {
        this.reading = reading;
        this.player = player;
        side = new Said<>(reading);
        club = new Said<>(reading);
        rated = new Said<>(reading);
        joins = new Said<>(reading);
        leaves = new Said<>(reading);
    }

    Player read() {
        Id id = reading.id(player);
        Under.each(reading, id, player.getLines(), Under.words("player", player), this::take);
        return new Player(id, Reading.label(player), side.value(), club.value(), Said.number(rated),
                Said.number(joins), Said.number(leaves), evenings, newcomer, Reading.notes(player.getLines()));
    }

    private Taken take(Line line, Id id) {
        if (line instanceof PlayerSide of) {
            side.say(of, Reading.ref(of.getSide()));
        } else if (line instanceof PlayerFact fact) {
            fact(fact);
        } else {
            return Taken.NO;
        }
        return Taken.ALONE;
    }

    private void fact(PlayerFact fact) {
        if (fact.getClub() != null) {
            club.say(fact, Reading.ref(fact.getClub()));
        }
        if (fact.getRated() != null) {
            rated.say(fact, Optional.of(fact.getRated()));
        }
        if (fact.getJoins() != null) {
            joins.say(fact, Optional.of(
                    reading.atLeastOne(fact, CampaignPackage.Literals.PLAYER_FACT__JOINS, fact.getJoins())));
        }
        if (fact.getLeaves() != null) {
            leaves.say(fact, Optional.of(
                    reading.atLeastOne(fact, CampaignPackage.Literals.PLAYER_FACT__LEAVES, fact.getLeaves())));
        }
        evenings.addAll(Reading.written(fact.getEvenings()));
        newcomer |= fact.isNewcomer();
    }
}
