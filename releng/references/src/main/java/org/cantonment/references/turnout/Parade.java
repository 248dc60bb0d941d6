package org.cantonment.references.turnout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.supply.Supply;

/**
 * A large question drawn by lot: about one piece of each type, types in families, kindred allowed, and needs that name one
 * type or two, so that the families hang together.
 *
 * @param arcs for each need the places of the types that may stand there
 * @param there for each type how many there are
 */
public record Parade(Catalogue catalogue, Supply supply, Allowance allowance, List<Requirement> needs, int[][] arcs,
        int[] there) {
    private static final Id CARD = Id.of("Book", "Card");

    /**
     * Draws.
     *
     * @param types how many types; about as many pieces
     * @param needs how many needs, each of 1 to 4 pieces
     * @param kin how many types a family has
     */
    public static Parade draw(int types, int needs, int kin, long seed) {
        Random random = new Random(seed);
        List<Family> families = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        int[] there = new int[types];
        Map<Id, Integer> lying = new TreeMap<>();
        for (int t = 0; t < types; t++) {
            if (t % kin == 0) {
                families.add(new Family(Id.of("Range", "Family-" + t / kin), "", Optional.empty(), List.of()));
            }
            pieces.add(new Piece(type(t), "", Optional.of(families.get(t / kin).id()), List.of()));
            there[t] = random.nextInt(3);
            lying.put(type(t), there[t]);
        }
        Catalogue catalogue = Catalogue.of(List.of(new Range(Id.of("Range"), "", Optional.empty(), families, pieces, List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of())), List.of());
        List<Requirement> asked = new ArrayList<>();
        int[][] arcs = new int[needs][];
        for (int n = 0; n < needs; n++) {
            int one = random.nextInt(types);
            int other = random.nextBoolean() ? random.nextInt(types) : one;
            asked.add(new Requirement(Id.of("List").line(n + 1), 1 + random.nextInt(4),
                    one == other ? List.of(type(one)) : List.of(type(one), type(other))));
            arcs[n] = IntStream.range(0, types)
                    .filter(t -> t / kin == one / kin || t / kin == other / kin).toArray();
        }
        Likeness card = new Likeness(CARD, "", List.of(new Allows(CARD.line(1), Level.KINDRED, Validity.ALWAYS)), List.of());
        return new Parade(catalogue, Supply.pieces(lying), Allowance.of(catalogue, List.of(card), Optional.empty(), Terms.ANY),
                asked, arcs, there);
    }

    private static Id type(int number) {
        return Id.of("Range", "Type-" + number);
    }

    /** How many pairs of a need and a type that may stand there. */
    public int edges() {
        int edges = 0;
        for (int[] some : arcs) {
            edges += some.length;
        }
        return edges;
    }
}
