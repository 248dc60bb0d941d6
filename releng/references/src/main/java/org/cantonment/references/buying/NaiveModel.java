package org.cantonment.references.buying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Discount;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Offer;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Seller;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.cantonment.domain.shelf.Holding;

/**
 * An errand as plainly as it can be put, for CP-SAT and SCIP of OR-Tools: a number for each box and for each way of building, and for
 * each list a number for each type at each need. Boxes with caps are told apart one by one.
 */
public final class NaiveModel {

    private static final int MOST = 14;

    private final Errand errand;
    private final CpModel model = new CpModel();
    private final Map<Id, LinearExprBuilder> supply = new HashMap<>();
    private final List<Map<Id, LinearExprBuilder>> perList = new ArrayList<>();
    private final Map<Id, LinearExprBuilder> parts = new TreeMap<>();
    private final Map<Id, Integer> partsOwned = new HashMap<>();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final Map<Id, Id> familyOf = new HashMap<>();
    private final Map<Turns, IntVar> turns = new HashMap<>();

    private NaiveModel(Errand errand) {
        this.errand = errand;
    }

    /** The least cost in cents; empty if there is no plan. */
    public static OptionalLong solve(Errand errand, double seconds) {
        return new NaiveModel(errand).solve(seconds);
    }

    /** The same by SCIP. */
    public static OptionalLong scip(Errand errand, long milliseconds) {
        NaiveModel naive = new NaiveModel(errand);
        naive.write();
        return ScipOfModel.solve(naive.model.model(), milliseconds);
    }

    private void write() {
        for (Piece piece : errand.range().pieces()) {
            supply.put(piece.id(), LinearExpr.newBuilder());
            piece.family().ifPresent(family -> familyOf.put(piece.id(), family));
        }
        errand.range().bits().forEach(bits -> supply.put(bits.id(), LinearExpr.newBuilder()));
        for (Family family : errand.range().families()) {
            family.parent().ifPresent(parent -> familyOf.put(family.id(), parent));
        }
        errand.lists().forEach(list -> perList.add(new HashMap<>()));
        for (Part part : errand.range().parts()) {
            parts.put(part.id(), LinearExpr.newBuilder());
        }
        for (Holding holding : errand.shelf().holdings()) {
            if (supply.containsKey(holding.what())) {
                supply.get(holding.what()).add(holding.count());
            } else {
                parts.get(holding.what()).add(holding.count());
            }
        }
        buy();
        parts.forEach((part, count) -> build(part(part), count, List.of()));
        convert();
        for (int l = 0; l < errand.lists().size(); l++) {
            field(l);
        }
        model.minimize(cost);
    }

    private OptionalLong solve(double seconds) {
        write();
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(1).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return OptionalLong.empty();
        }
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("The reference did not get done: " + status);
        }
        return OptionalLong.of(Math.round(solver.objectiveValue()));
    }

    private Part part(Id id) {
        return errand.range().parts().stream().filter(part -> part.id().equals(id)).findFirst().orElseThrow();
    }

    private Box box(Id id) {
        return errand.range().boxes().stream().filter(box -> box.id().equals(id)).findFirst().orElseThrow();
    }

    private void buy() {
        for (Box box : errand.range().boxes()) {
            if (!box.prices().isEmpty()) {
                int most = box.stock().isEmpty() ? MOST : box.stock().get(0).count();
                IntVar count = model.newIntVar(0, Math.min(MOST, most), box.id() + "");
                cost.addTerm(count, box.prices().get(0).money().getAmountMinorLong());
                open(box, count);
            }
        }
        errand.range().sellers().forEach(this::order);
    }

    private void order(Seller seller) {
        LinearExprBuilder goods = LinearExpr.newBuilder();
        LinearExprBuilder boxes = LinearExpr.newBuilder();
        long dearest = 0;
        for (Offer offer : seller.offers()) {
            int most = Math.min(MOST, offer.count().orElse(MOST));
            IntVar count = model.newIntVar(0, most, offer.id() + "");
            dearest += most * offer.money().getAmountMinorLong();
            goods.addTerm(count, offer.money().getAmountMinorLong());
            boxes.addTerm(count, 1);
            open(box(offer.box()), count);
        }
        cost.add(goods);
        if (!seller.postage().isEmpty()) {
            BoolVar sent = model.newBoolVar("sent");
            BoolVar any = model.newBoolVar("any");
            BoolVar free = model.newBoolVar("free");
            model.addEquality(boxes, 0).onlyEnforceIf(any.not());
            Optional<Long> from = seller.postage().get(0).freeFrom().map(one -> one.getAmountMinorLong());
            if (from.isPresent()) {
                model.addGreaterOrEqual(goods, from.get()).onlyEnforceIf(free);
            } else {
                model.addEquality(free, 0);
            }
            model.addBoolOr(new Literal[] {any.not(), free, sent});
            cost.addTerm(sent, seller.postage().get(0).money().getAmountMinorLong());
        }
        for (Discount discount : seller.discounts()) {
            BoolVar given = model.newBoolVar("given");
            discount.from().ifPresent(from ->
                    model.addGreaterOrEqual(goods, from.getAmountMinorLong()).onlyEnforceIf(given));
            IntVar off = model.newIntVar(0, dearest * discount.percent() / 100, "off");
            LinearExprBuilder hundredfold = LinearExpr.newBuilder().addTerm(off, 100);
            model.addLessOrEqual(hundredfold, LinearExpr.newBuilder().addTerm(LinearExpr.affine(goods, 1, 0),
                    discount.percent())).onlyEnforceIf(given);
            model.addEquality(off, 0).onlyEnforceIf(given.not());
            cost.addTerm(off, -1);
        }
    }

    private void open(Box box, IntVar count) {
        if (box.caps().isEmpty()) {
            for (Content content : box.contents()) {
                (supply.containsKey(content.what()) ? supply : parts).get(content.what()).addTerm(count, content.count());
            }
            return;
        }
        LinearExprBuilder all = LinearExpr.newBuilder();
        for (int i = 0; i < MOST; i++) {
            BoolVar one = model.newBoolVar(box.id() + " " + i);
            all.add(one);
            List<Map<Cap, LinearExprBuilder>> capped = new ArrayList<>();
            for (int l = 0; l < errand.lists().size(); l++) {
                Map<Cap, LinearExprBuilder> own = new HashMap<>();
                box.caps().forEach(cap -> own.put(cap, LinearExpr.newBuilder()));
                capped.add(own);
            }
            for (Content content : box.contents()) {
                if (supply.containsKey(content.what())) {
                    supply.get(content.what()).addTerm(one, content.count());
                } else {
                    build(part(content.what()), LinearExpr.newBuilder().addTerm(one, content.count()), capped);
                }
            }
            capped.forEach(own -> own.forEach((cap, built) -> model.addLessOrEqual(built, cap.most())));
        }
        model.addEquality(all, count);
    }

    /** Builds parts: once for all lists, or anew for each if they come loose between games. */
    private void build(Part part, LinearExprBuilder count, List<Map<Cap, LinearExprBuilder>> capped) {
        boolean anew = part.fixing() == Fixing.LOOSE_BETWEEN_GAMES;
        for (int l = 0; l < (anew ? errand.lists().size() : 1); l++) {
            LinearExprBuilder used = LinearExpr.newBuilder();
            for (Build build : part.builds()) {
                IntVar times = model.newIntVar(0, 400, build.id() + "");
                used.add(times);
                for (Content left : build.leaves()) {
                    (anew ? perList.get(l).computeIfAbsent(left.what(), id -> LinearExpr.newBuilder())
                            : supply.get(left.what())).addTerm(times, left.count());
                }
                for (Content gives : build.gives()) {
                    (anew ? perList.get(l).computeIfAbsent(gives.what(), id -> LinearExpr.newBuilder())
                            : supply.get(gives.what())).addTerm(times, gives.count());
                    for (int c = 0; c < capped.size(); c++) {
                        boolean counts = !anew || c == l;
                        int list = c;
                        capped.get(c).forEach((cap, built) -> {
                            if (counts && cap.of().contains(gives.what())) {
                                capped.get(list).get(cap).addTerm(times, gives.count());
                            }
                        });
                    }
                }
            }
            model.addLessOrEqual(used, count);
        }
    }

    private void convert() {
        for (Fact fact : errand.card().facts()) {
            if (fact instanceof Turns turn && turn.from().stream().noneMatch(one -> one.what().equals(turn.to().what()))) {
                IntVar times = model.newIntVar(0, turn.times().orElse(60), turn.id() + "");
                turns.put(turn, times);
                for (Content from : turn.from()) {
                    supply.get(from.what()).addTerm(times, -from.count());
                    model.addGreaterOrEqual(LinearExpr.affine(supply.get(from.what()), 1, 0), 0);
                }
            }
        }
    }

    private Set<Id> meant(Id name) {
        Set<Id> types = new HashSet<>();
        for (Piece piece : errand.range().pieces()) {
            for (Id at = piece.id(); at != null; at = familyOf.get(at)) {
                if (at.equals(name)) {
                    types.add(piece.id());
                }
            }
        }
        return types;
    }

    private Level level() {
        return errand.card().facts().stream().filter(Allows.class::isInstance).map(fact -> ((Allows) fact).level())
                .findFirst().orElse(Level.EXACT);
    }

    private void field(int l) {
        Map<Id, LinearExprBuilder> used = new TreeMap<>();
        Map<Id, LinearExprBuilder> exactly = new TreeMap<>();
        Map<Id, LinearExprBuilder> otherwise = new TreeMap<>();
        Map<Stands, LinearExprBuilder> byLine = new HashMap<>();
        Map<Stands, Integer> asked = new HashMap<>();
        Map<Turns, LinearExprBuilder> converted = new HashMap<>();
        for (Requirement need : errand.lists().get(l)) {
            LinearExprBuilder filled = LinearExpr.newBuilder();
            Set<Id> exact = new HashSet<>();
            need.anyOf().forEach(name -> exact.addAll(meant(name)));
            Set<Id> kin = new HashSet<>();
            if (level() == Level.KINDRED) {
                need.anyOf().stream().filter(supply::containsKey).map(familyOf::get).filter(one -> one != null)
                        .forEach(family -> kin.addAll(meant(family)));
                kin.removeAll(exact);
            }
            exact.forEach(type -> stand(type, need, filled, used, exactly));
            kin.forEach(type -> stand(type, need, filled, used, otherwise));
            for (Fact fact : errand.card().facts()) {
                if (fact instanceof Stands line && exact.contains(line.standFor().get(0))
                        && !exact.contains(line.what().get(0)) && !kin.contains(line.what().get(0))) {
                    IntVar stands = stand(line.what().get(0), need, filled, used, otherwise);
                    byLine.computeIfAbsent(line, one -> LinearExpr.newBuilder()).add(stands);
                    asked.merge(line, need.count(), Integer::sum);
                } else if (fact instanceof Turns turn && turns.containsKey(turn) && exact.contains(turn.to().what())) {
                    IntVar stands = model.newIntVar(0, need.count(), "converted");
                    filled.add(stands);
                    converted.computeIfAbsent(turn, one -> LinearExpr.newBuilder()).add(stands);
                    exactly.computeIfAbsent(turn.to().what(), id -> LinearExpr.newBuilder()).add(stands);
                }
            }
            model.addGreaterOrEqual(filled, need.count());
        }
        used.forEach((type, count) -> {
            LinearExprBuilder there = LinearExpr.newBuilder().add(supply.get(type));
            if (perList.get(l).containsKey(type)) {
                there.add(perList.get(l).get(type));
            }
            model.addLessOrEqual(count, there);
        });
        byLine.forEach((line, count) -> line.percent().ifPresent(percent ->
                model.addLessOrEqual(count, asked.get(line) * percent / 100)));
        converted.forEach((turn, count) -> model.addLessOrEqual(count,
                LinearExpr.newBuilder().addTerm(turns.get(turn), turn.to().count())));
        if (errand.card().facts().stream().anyMatch(OneTable.class::isInstance)) {
            oneMeaning(exactly, otherwise);
        }
    }

    private IntVar stand(Id type, Requirement need, LinearExprBuilder filled, Map<Id, LinearExprBuilder> used,
            Map<Id, LinearExprBuilder> as) {
        IntVar count = model.newIntVar(0, need.count(), type + " for " + need.entry());
        filled.add(count);
        used.computeIfAbsent(type, id -> LinearExpr.newBuilder()).add(count);
        as.computeIfAbsent(type, id -> LinearExpr.newBuilder()).add(count);
        return count;
    }

    private void oneMeaning(Map<Id, LinearExprBuilder> exactly, Map<Id, LinearExprBuilder> otherwise) {
        exactly.forEach((type, count) -> {
            if (otherwise.containsKey(type)) {
                BoolVar itself = model.newBoolVar(type + " itself");
                model.addEquality(count, 0).onlyEnforceIf(itself.not());
                model.addEquality(otherwise.get(type), 0).onlyEnforceIf(itself);
            }
        });
    }
}
