package org.cantonment.rules.muster;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Taken;
import org.cantonment.domain.rules.Dearer;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/** Prices the nodes of a muster, and keeps every part of the sum. */
final class Pricer {

    private static final long MOST_POINTS = 1_000_000_000_000L;

    private final Muster muster;
    private final long[] soFar;
    private final List<List<TallyPart>> all = new ArrayList<>();
    private boolean unpriced;

    Pricer(Muster muster) {
        this.muster = muster;
        Ruling ruling = muster.ruling();
        this.soFar = new long[ruling.choices().size()];
    }

    /** What everything costs by itself. */
    void price() {
        for (Node node : muster.nodes()) {
            List<TallyPart> parts = new ArrayList<>(4);
            all.add(parts);
            if (node.choice == null) {
                continue;
            }
            if (node.choice instanceof UnitView unit) {
                price(node, unit, parts);
            } else {
                price(node, (FormationView) node.choice, parts);
            }
            long points = 0;
            for (TallyPart part : parts) {
                points += part.points();
            }
            muster.charge(node, points);
        }
    }

    /** One more part of what an entry costs. */
    void add(Node node, TallyPart part) {
        all.get(node.index).add(part);
    }

    Tally tally() {
        long total = 0;
        List<TallyLine> lines = new ArrayList<>(muster.nodes().size());
        for (Node node : muster.nodes()) {
            if (node.choice != null) {
                total += node.points;
                lines.add(new TallyLine(node.entry.id(), node.choice.title(), node.copies, node.points,
                        all.get(node.index)));
            }
        }
        return new Tally(total, lines, unpriced);
    }

    private static void price(Node node, FormationView formation, List<TallyPart> parts) {
        if (formation.points() != 0) {
            parts.add(new TallyPart("for itself", bounded(formation.points(), node.copies), formation.pointsRule()));
        }
    }

    private void price(Node node, UnitView unit, List<TallyPart> parts) {
        node.strength = node.entry.strength().orElseGet(unit::leastStrength);
        node.step = unit.step(node.strength);
        int counted = node.step == null ? unit.nearestStrength(node.strength) : node.strength;
        Step step = unit.step(counted);
        unpriced |= !unit.priced();
        parts.add(new TallyPart("strength " + counted, bounded(step.points(counted), node.copies),
                Optional.of(step.rule())));
        for (Taken taken : node.entry.options()) {
            OptionView option = unit.options().get(taken.option());
            if (option != null && taken.count() > 0) {
                parts.add(part(taken.count(), option, node.copies));
            }
        }
        long before = soFar[unit.index()];
        soFar[unit.index()] = before + node.copies;
        for (Dearer dearer : unit.dearer()) {
            long beyond = Math.max(0, before + node.copies - Math.max(before, dearer.beyond()));
            if (beyond > 0) {
                parts.add(new TallyPart("dearer beyond " + dearer.beyond(), bounded(dearer.points(), beyond),
                        Optional.of(dearer.id())));
            }
        }
    }

    private static TallyPart part(int count, OptionView option, long copies) {
        String words = count == 1 ? option.title() : count + " " + option.title();
        Optional<Id> rule = Optional.of(option.rule());
        return new TallyPart(words, bounded(option.cost().times(count), copies), rule);
    }

    /** Points of one times how many, kept within what no sum of lines can overflow. */
    static long bounded(long each, long count) {
        long one = Math.max(-MOST_POINTS, Math.min(MOST_POINTS, each));
        return Math.max(-MOST_POINTS, Math.min(MOST_POINTS, one * Math.min(count, Muster.MOST)));
    }
}
