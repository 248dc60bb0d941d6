package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.allows;
import static org.cantonment.stock.tests.Things.lets;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.eras.Army;
import org.cantonment.stock.eras.Carry;
import org.cantonment.stock.eras.EraUnits;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.ShelfEras;
import org.cantonment.stock.eras.Step;
import org.cantonment.stock.eras.UnitAnswer;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** One shelf in three eras: staff, treads and cranks, of which the cranks end and pike cars follow. Solved by hand. */
class ShelfErasTest {

    private static final Id REED = Id.of("Book/Reed-Year");
    private static final Id DYKE = Id.of("Book/Dyke-War");
    private static final Id THAW = Id.of("Book/Long-Thaw");

    private static Things shelf() {
        return new Things().piece("Staff-Car", null).piece("Tread-Wagon", null).piece("Crank-Car", null)
                .piece("Pike-Car", null).piece("Scout-Cart", null).piece("Odd", null)
                .part("Hull", "Tread-Wagon", "Crank-Car")
                .unit("Crank-Troop", "4 Crank-Car").unit("Pike-Troop", "4 Pike-Car")
                .has("Staff-Car").has("6 Tread-Wagon").has("9 Crank-Car").has("3 Scout-Cart").has("7 Odd").has("2 Hull");
    }

    private static Step step(int strength, int points, String what) {
        return new Step(strength, points, List.of(new Requirement(Id.of("any"), strength, Things.ids(what))));
    }

    private static FieldUnit unit(String name, Step... steps) {
        return new FieldUnit(Id.of("Book", name), List.of(), List.of(steps));
    }

    private static List<EraUnits> eras(Allowance allowance) {
        FieldUnit staff = unit("Staff", step(1, 10, "Staff-Car"));
        FieldUnit treads = unit("Tread-Troop", step(3, 24, "Tread-Wagon"), step(5, 40, "Tread-Wagon"));
        FieldUnit cranks = unit("Crank-Troop", step(4, 20, "Crank-Car"));
        FieldUnit pikes = unit("Pike-Troop", step(4, 26, "Pike-Car"));
        FieldUnit scouts = unit("Marsh-Scouts", step(2, 8, "Scout-Cart"));
        FieldUnit thawTreads = unit("Tread-Troop", step(3, 27, "Tread-Wagon"), step(5, 45, "Tread-Wagon"));
        return List.of(new EraUnits(REED, allowance, List.of(staff, treads, cranks)),
                new EraUnits(DYKE, allowance, List.of(staff, treads, cranks, pikes, scouts)),
                new EraUnits(THAW, allowance, List.of(staff, thawTreads, pikes, scouts)));
    }

    private static ShelfEras ask(Things things, Fact... facts) {
        Catalogue catalogue = things.catalogue();
        Allowance allowance = Allowance.of(catalogue, List.of(Things.card(facts)), Optional.empty(), Terms.ANY);
        return ShelfEras.of(catalogue, Supply.of(catalogue, List.of(things.shelf())), eras(allowance), Optional.empty(),
                CancelToken.NEVER, Progress.SILENT);
    }

    private static List<Integer> copies(ShelfEras eras, int era) {
        return eras.eras().get(era).units().stream().map(UnitAnswer::copies).toList();
    }

    @Test
    void eachUnitByItselfAtItsLeastStrength() {
        ShelfEras eras = ask(shelf(), allows(Level.EXACT));
        // Two hulls more make 8 treads or 11 cranks.
        assertEquals(List.of(1, 2, 2), copies(eras, 0));
        assertEquals(List.of(1, 2, 2, 0, 1), copies(eras, 1));
        UnitAnswer pikes = eras.eras().get(1).units().get(3);
        assertEquals(4, pikes.lacking());
        assertEquals(1, pikes.reasons().size());
    }

    @Test
    void theArmyOfMostPoints() {
        ShelfEras eras = ask(shelf(), allows(Level.EXACT));
        // Staff 10, both hulls as treads: 8 treads are 5 and 3 for 64; 9 cranks are two troops for 40.
        Army reed = eras.eras().get(0).army();
        assertEquals(114, reed.points());
        assertTrue(reed.proven());
        assertEquals(List.of(new Fielded(Id.of("Book/Staff"), 1, 10, 1), new Fielded(Id.of("Book/Tread-Troop"), 3, 24, 1),
                new Fielded(Id.of("Book/Tread-Troop"), 5, 40, 1), new Fielded(Id.of("Book/Crank-Troop"), 4, 20, 2)),
                reed.units());
        assertEquals(122, eras.eras().get(1).army().points());
        // 10 + 27 + 45 + 8 of the Thaw.
        assertEquals(90, eras.eras().get(2).army().points());
    }

    @Test
    void whatCarriesOver() {
        ShelfEras eras = ask(shelf(), allows(Level.EXACT));
        // Of use in the Reed Year: staff, 6 treads, 9 cranks, 2 hulls; cranks are of no use in the Thaw, hulls are.
        assertEquals(new Carry(REED, THAW, 18, 9, 114, 74), eras.carry(REED, THAW).orElseThrow());
        assertEquals(new Carry(REED, DYKE, 18, 18, 114, 114), eras.carry(REED, DYKE).orElseThrow());
        assertEquals(new Carry(THAW, REED, 12, 9, 90, 82), eras.carry(THAW, REED).orElseThrow());
        assertEquals(new Carry(THAW, THAW, 12, 12, 90, 90), eras.carry(THAW, THAW).orElseThrow());
        assertEquals(9, eras.carries().size());
    }

    @Test
    void aUnitThatStandsForAnotherCarriesItsModelsOver() {
        ShelfEras eras = ask(shelf(), lets("Book/Crank-Troop", "Book/Pike-Troop"));
        assertEquals(List.of(1, 2, 2, 1), copies(eras, 2));
        assertEquals(new Carry(REED, THAW, 18, 18, 114, 114), eras.carry(REED, THAW).orElseThrow());
        assertEquals(90 + 52, eras.eras().get(2).army().points());
    }

    @Test
    void onlyUnitsOfOneSideStandTogether() {
        Things things = new Things().piece("Man", null).piece("Gun", null).has("10 Man").has("2 Gun");
        Id weir = Id.of("Book/Weir");
        Id marsh = Id.of("Book/Marsh");
        FieldUnit guards = new FieldUnit(Id.of("Book/Guards"), List.of(weir), List.of(step(5, 10, "Man")));
        FieldUnit band = new FieldUnit(Id.of("Book/Band"), List.of(marsh), List.of(step(5, 12, "Man")));
        FieldUnit guns = new FieldUnit(Id.of("Book/Guns"), List.of(weir), List.of(step(2, 9, "Gun")));
        List<EraUnits> era = List.of(new EraUnits(REED, Allowance.EXACT, List.of(guards, band, guns)));
        Supply supply = Supply.of(things.catalogue(), List.of(things.shelf()));
        Army army = ShelfEras.of(things.catalogue(), supply, era, Optional.empty(), CancelToken.NEVER, Progress.SILENT)
                .eras().get(0).army();
        assertEquals(Optional.of(weir), army.side());
        assertEquals(29, army.points());
        Army other = ShelfEras.of(things.catalogue(), supply, era, Optional.of(marsh), CancelToken.NEVER, Progress.SILENT)
                .eras().get(0).army();
        assertEquals(24, other.points());
    }

    @Test
    void anEmptyShelfAnEraWithoutUnitsAndAUnitThatNeedsNothing() {
        Things nothing = new Things().piece("Man", null);
        FieldUnit free = new FieldUnit(Id.of("Book/Free"), List.of(), List.of(new Step(1, 5, List.of())));
        FieldUnit guards = unit("Guards", step(5, 10, "Man"));
        ShelfEras eras = ShelfEras.of(nothing.catalogue(), Supply.NONE, List.of(
                new EraUnits(REED, Allowance.EXACT, List.of()), new EraUnits(DYKE, Allowance.EXACT, List.of(free, guards))),
                Optional.empty(), CancelToken.NEVER, Progress.SILENT);
        assertEquals(new Carry(REED, DYKE, 0, 0, 0, 0), eras.carry(REED, DYKE).orElseThrow());
        assertEquals(List.of(UnitAnswer.ENDLESS, 0), copies(eras, 1));
        assertEquals(0, eras.eras().get(1).army().points());
    }

    @Test
    void whoeverNoLongerWantsItIsObeyed() {
        Things things = shelf();
        List<String> told = new ArrayList<>();
        assertThrows(Cancelled.class, () -> ShelfEras.of(things.catalogue(),
                Supply.of(things.catalogue(), List.of(things.shelf())), eras(Allowance.EXACT), Optional.empty(),
                () -> !told.isEmpty(), (done, of, doing) -> told.add(doing)));
    }
}
