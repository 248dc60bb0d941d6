package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.need;
import static org.cantonment.stock.tests.Weeks.player;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Fact;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.session.Evening;
import org.cantonment.stock.session.Gap;
import org.cantonment.stock.session.Lender;
import org.cantonment.stock.session.Lending;
import org.cantonment.stock.session.Lent;
import org.cantonment.stock.session.Seat;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** Who lends what to whom on one evening. Numbers solved by hand, and small evenings by trying every set of lenders. */
class LendingTest {

    private static final Id CLUB = Id.of("club");
    private static final Id WAGON = id("Tread-Wagon");
    private static final Catalogue CATALOGUE = new Things().piece("Tread-Wagon", null).catalogue();

    private static Seat seat(String player, int wagons) {
        return new Seat(player(player), Id.of(player), List.of(need(player, wagons, "Tread-Wagon")), Allowance.EXACT);
    }

    private static Lender has(Id who, int wagons) {
        return new Lender(who, Supply.pieces(Map.of(WAGON, wagons)));
    }

    private static List<Lender> club() {
        return List.of(has(player("Ombra"), 4), has(player("Brack"), 1), has(player("Quill"), 2), has(CLUB, 1));
    }

    private static Evening ask(List<Lender> lenders, Seat... seats) {
        return Lending.of(CATALOGUE, List.of(seats), lenders, CancelToken.NEVER);
    }

    @Test
    void everybodyPlaysIfOmbraAndTheClubLendOneEach() {
        Evening tuesday = ask(club(), seat("Ombra", 3), seat("Brack", 3), seat("Quill", 2));
        assertEquals(0, tuesday.lacking());
        assertEquals(List.of(new Lent(player("Ombra"), player("Brack"), WAGON, 1), new Lent(CLUB, player("Brack"), WAGON, 1)),
                tuesday.loans());
        assertTrue(tuesday.fewest() && tuesday.proven());
    }

    @Test
    void oneMoreAndNineAreWantedOfEight() {
        Evening tuesday = ask(club(), seat("Ombra", 4), seat("Brack", 3), seat("Quill", 2));
        assertEquals(1, tuesday.lacking());
        assertTrue(tuesday.proven());
        assertEquals(1, tuesday.gaps().size());
        Gap gap = tuesday.gaps().get(0);
        assertEquals(List.of(9, 8), List.of(gap.needed(), gap.there()));
        assertEquals(List.of(player("Brack"), player("Ombra"), player("Quill")), List.copyOf(gap.needs().keySet()));
        assertEquals(List.of(CLUB), tuesday.lenders());
    }

    @Test
    void whoPlaysOnAnotherEveningLendsBothAndIsTheOnlyOne() {
        Evening tuesday = ask(club(), seat("Ombra", 4), seat("Brack", 3));
        assertEquals(0, tuesday.lacking());
        assertEquals(List.of(new Lent(player("Quill"), player("Brack"), WAGON, 2)), tuesday.loans());
    }

    @Test
    void nobodyLendsWhatIsNotBuilt() {
        Things frames = new Things().piece("Tread-Wagon", null).part("Frame", "Tread-Wagon").has("3 Frame");
        Supply unbuilt = Supply.of(frames.catalogue(), List.of(frames.shelf()));
        Evening alone = Lending.of(frames.catalogue(), List.of(seat("Ombra", 2), seat("Brack", 1)),
                List.of(new Lender(player("Ombra"), unbuilt)), CancelToken.NEVER);
        assertEquals(1, alone.lacking());
        assertEquals(0, alone.turnout(player("Ombra")).orElseThrow().lacking());
        assertEquals(List.of(), alone.loans());
    }

    @Test
    void framesThatCannotBeBuiltBothWaysAreNot() {
        Things frames = new Things().piece("Spotter", null).piece("Carrier", null).part("Frame", "2 Spotter", "3 Carrier")
                .has("2 Frame");
        Supply supply = Supply.of(frames.catalogue(), List.of(frames.shelf()));
        Seat ombra = new Seat(player("Ombra"), Id.of("Ombra"), List.of(need("A", 3, "Spotter"), need("B", 1, "Carrier")),
                Allowance.EXACT);
        List<Lender> lenders = new ArrayList<>(List.of(new Lender(player("Ombra"), supply)));
        assertEquals(1, Lending.of(frames.catalogue(), List.of(ombra), lenders, CancelToken.NEVER).lacking());
        lenders.add(new Lender(CLUB, Supply.pieces(Map.of(id("Spotter"), 1))));
        Evening lent = Lending.of(frames.catalogue(), List.of(ombra), lenders, CancelToken.NEVER);
        assertEquals(0, lent.lacking());
        assertEquals(1, lent.loans().size());
    }

    /** Two types, one of which may stand in; every set of lenders is tried with a plain flow of its own. */
    @Test
    void noFewerLendersDo() {
        Random random = new Random(13);
        Fact[] lets = {Things.lets("Crank", "Tread")};
        Things range = new Things().piece("Tread", null).piece("Crank", null);
        Catalogue catalogue = range.catalogue();
        Allowance allowance = Allowance.of(catalogue, List.of(Things.card(lets)), Optional.empty(), Terms.ANY);
        for (int run = 0; run < 300; run++) {
            int players = 2 + random.nextInt(3);
            int[][] has = new int[players + 1][2];
            int[][] wants = new int[players][2];
            List<Lender> lenders = new ArrayList<>();
            List<Seat> seats = new ArrayList<>();
            int playing = 1 + random.nextInt(players);
            for (int p = 0; p <= players; p++) {
                has[p] = new int[] {random.nextInt(4), random.nextInt(3)};
                Id who = p == players ? CLUB : player("P" + p);
                lenders.add(new Lender(who, Supply.pieces(Map.of(id("Tread"), has[p][0], id("Crank"), has[p][1]))));
                if (p < playing) {
                    wants[p] = new int[] {random.nextInt(4), random.nextInt(3)};
                    seats.add(new Seat(who, Id.of("L" + p), List.of(need("T" + p, wants[p][0], "Tread"),
                            need("C" + p, wants[p][1], "Crank")), allowance));
                }
            }
            Evening evening = Lending.of(catalogue, seats, lenders, CancelToken.NEVER);
            int[] best = byHand(has, wants, playing);
            assertEquals(best[0], evening.filled(), "run " + run);
            assertEquals(best[1], evening.lenders().size(), "run " + run);
            assertEquals(evening.lacking(), evening.gaps().stream().mapToInt(Gap::lacking).sum(), "run " + run);
        }
    }

    /** The most that can be filled, and the fewest lenders who make it so: every set tried, filled by counting. */
    private static int[] byHand(int[][] has, int[][] wants, int playing) {
        int most = -1;
        int fewest = 0;
        for (int set = 0; set < 1 << has.length; set++) {
            int filled = fill(has, wants, playing, set);
            int size = Integer.bitCount(set);
            if (filled > most || filled == most && size < fewest) {
                most = filled;
                fewest = size;
            }
        }
        return new int[] {most, fewest};
    }

    // Deficits by player: cranks serve cranks first, for only they can; what is over may serve treads.
    private static int fill(int[][] has, int[][] wants, int playing, int set) {
        int filled = 0;
        int poolT = 0;
        int poolC = 0;
        int lackT = 0;
        int lackC = 0;
        for (int p = 0; p < has.length; p++) {
            boolean plays = p < playing;
            int t = plays ? wants[p][0] : 0;
            int c = plays ? wants[p][1] : 0;
            int own = Math.min(has[p][1], c);
            int spareC = has[p][1] - own;
            int treads = Math.min(has[p][0], t);
            int stand = Math.min(spareC, t - treads);
            boolean lends = (set >> p & 1) == 1;
            // A lender's cranks that stand in at home could stand as themselves elsewhere: count them as lent, and the gap with it.
            filled += own + treads + (lends ? 0 : stand);
            poolT += lends ? has[p][0] - treads : 0;
            poolC += lends ? spareC : 0;
            lackT += t - treads - (lends ? 0 : stand);
            lackC += c - own;
        }
        int treadsLent = Math.min(poolT, lackT);
        int cranks = Math.min(poolC, lackC);
        return filled + treadsLent + cranks + Math.min(poolC - cranks, lackT - treadsLent);
    }
}
