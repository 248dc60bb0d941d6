package org.cantonment.buying.growth;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.cantonment.stock.likeness.Allowance;

/**
 * What a list of a stage is to be composed by.
 *
 * @param name the list's name, also the name of the choice: no two stages share one
 * @param ruling the rules as they stand in the round
 * @param situation the limit of points, the player and his side; a list is composed only within a limit
 * @param least points that the list uses at the least, so that the cheapest list is not the smallest there is
 * @param wishes what the player likes, wants first, and never wants: units, kinds and formations
 */
public record Brief(Id name, String title, int stage, Ruling ruling, Situation situation, Allowance allowance,
        int least, List<Wish> wishes) {

    /** @throws IllegalArgumentException if there is no limit of points */
    public Brief {
        wishes = List.copyOf(wishes);
        if (situation.points().isEmpty()) {
            throw new IllegalArgumentException(title + " has no limit of points");
        }
    }
}
