package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Loan;
import org.cantonment.stock.turnout.Muster;
import org.cantonment.stock.turnout.Party;
import org.cantonment.stock.turnout.Reason;
import org.junit.jupiter.api.Test;

/** An evening of three lists: tread wagons owned by Ombra 4, Brack 1, Quill 2 and the club 1. Solved by hand. */
class MusterTest {

    private static final Catalogue CATALOGUE = new Things().piece("Tread", null).catalogue();
    private static final Id OMBRA = Id.of("Season/Ombra");
    private static final Id BRACK = Id.of("Season/Brack");
    private static final Id QUILL = Id.of("Season/Quill");
    private static final Id CLUB = Id.of("the-club");

    private static Party party(Id who, int owned, int wanted) {
        return new Party(who, wanted == 0 ? List.of() : List.of(need(who.name(), wanted, "Tread")),
                Supply.pieces(Map.of(id("Tread"), owned)));
    }

    private static Muster muster(int ombra, int brack, int quill) {
        return Muster.of(CATALOGUE, Allowance.EXACT, List.of(party(OMBRA, 4, ombra), party(BRACK, 1, brack),
                party(QUILL, 2, quill), party(CLUB, 1, 0)), CancelToken.NEVER);
    }

    @Test
    void allCanPlayWithAWagonEachOfOmbraAndTheClub() {
        Muster muster = muster(3, 3, 2);
        assertTrue(muster.turnout().complete() && muster.fewest());
        assertEquals(List.of(new Loan(OMBRA, BRACK, id("Tread"), 1), new Loan(CLUB, BRACK, id("Tread"), 1)),
                sorted(muster.loans()));
    }

    @Test
    void oneMoreIsOneTooMany() {
        Muster muster = muster(4, 3, 2);
        assertEquals(1, muster.turnout().lacking());
        Reason.Block block = (Reason.Block) muster.turnout().reasons().get(0);
        assertEquals(List.of(9, 8), List.of(block.needed(), block.there()));
        assertEquals(1, block.from().size());
    }

    @Test
    void oneLenderIsBetterThanTwo() {
        Muster muster = muster(4, 3, 0);
        assertTrue(muster.turnout().complete() && muster.fewest());
        assertEquals(List.of(new Loan(QUILL, BRACK, id("Tread"), 2)), muster.loans());
    }

    @Test
    void nobodyLendsWhereEachHasEnough() {
        Muster muster = muster(4, 1, 2);
        assertTrue(muster.turnout().complete() && muster.fewest());
        assertEquals(List.of(), muster.loans());
    }

    /** Of one type the fewest lenders are those with most to spare, until what is short is there. */
    @Test
    void neverMoreLendersOrLoansThanMustBe() {
        Random random = new Random(12);
        int lending = 0;
        for (int i = 0; i < 400; i++) {
            List<Party> parties = new ArrayList<>();
            List<Integer> spare = new ArrayList<>();
            int shortOf = 0;
            for (int p = 0; p < 4 + random.nextInt(3); p++) {
                int owned = random.nextInt(6);
                int wanted = random.nextInt(6);
                parties.add(party(Id.of("Season/P" + p), owned, wanted));
                spare.add(Math.max(0, owned - wanted));
                shortOf += Math.max(0, wanted - owned);
            }
            spare.sort(Comparator.reverseOrder());
            int lenders = 0;
            for (int left = shortOf; left > 0 && lenders < spare.size() && spare.get(lenders) > 0; lenders++) {
                left -= spare.get(lenders);
            }
            int there = spare.stream().mapToInt(Integer::intValue).sum();
            Muster muster = Muster.of(CATALOGUE, Allowance.EXACT, parties, CancelToken.NEVER);
            assertEquals(Math.max(0, shortOf - there), muster.turnout().lacking(), parties.toString());
            assertEquals(Math.min(shortOf, there), muster.loans().stream().mapToInt(Loan::count).sum());
            if (shortOf <= there) {
                assertEquals(lenders, muster.loans().stream().map(Loan::from).distinct().count(), parties.toString());
                lending += lenders > 1 ? 1 : 0;
            }
        }
        assertTrue(lending > 40, "more than one lender: " + lending);
    }

    private static List<Loan> sorted(List<Loan> loans) {
        List<Loan> sorted = new ArrayList<>(loans);
        sorted.sort((one, other) -> one.from().compareTo(other.from()));
        return sorted;
    }
}
