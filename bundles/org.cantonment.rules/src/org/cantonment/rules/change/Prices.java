package org.cantonment.rules.change;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.Taken;
import org.cantonment.domain.rules.Dearer;
import org.cantonment.domain.rules.Successor;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/** What entries of a part cost: one of them, by the rules of now and by those it was written under. */
final class Prices {

    private final Ruling now;
    private final Ruling written;
    private final boolean surcharged;
    private final Charges chargedNow;
    private final Charges chargedThen;

    Prices(Part part) {
        this.now = part.now();
        this.written = part.written();
        this.surcharged = surcharged(now) || surcharged(written);
        this.chargedNow = new Charges(part.muster());
        this.chargedThen = new Charges(part.then());
    }

    /**
     * What one cost in the list as it was written, without surcharges beyond a number; if it could not be taken then, what
     * it costs now.
     */
    long old(Node node) {
        Entry entry = node.entry();
        Choice choice = then(entry);
        long plain = choice instanceof UnitView unit ? price(unit, entry) : choice == null ? 0 : choice.leastPoints();
        Charges charged = choice == now.choice(entry.what()) ? chargedNow : chargedThen;
        return Charges.price(plain, charged.of(node.index()));
    }

    /** The points that a successor moves that comes at so many. */
    long succeeded(Node node, long points) {
        return difference(node) ? Math.abs(points - old(node)) : Math.max(0, old(node)) + Math.max(0, points);
    }

    /** The same at the least, whatever else is in the list. */
    long succeededLeast(Node node, Variant variant) {
        long least = variant.least();
        boolean open = !variant.unit().surcharges().isEmpty() && difference(node);
        return open ? Math.max(0, least - old(node)) : succeeded(node, least);
    }

    /** Whether only the difference to the successor counts. */
    static boolean difference(Node node) {
        return node.unit().successor().filter(Successor::difference).isPresent();
    }

    /** The unit or formation as it was when the entry was written, or as it is now if it was not there then. */
    private Choice then(Entry entry) {
        Choice then = written.choice(entry.what());
        return then != null && !then.permission().outOfEra() ? then : now.choice(entry.what());
    }

    /** What one costs now, without surcharges. */
    static long now(Node node) {
        return node.unit() != null ? price(node.unit(), node.entry())
                : node.formation() != null ? node.formation().points() : 0;
    }

    /** What the strength of one costs now; if it is not offered, what it cost when it was written. */
    long strength(Node node) {
        if (node.step() != null) {
            return node.step().points(node.strength());
        }
        return then(node.entry()) instanceof UnitView unit ? strength(unit, node.strength()) : 0;
    }

    private static long strength(UnitView unit, int strength) {
        Step step = unit.step(strength);
        return step == null ? unit.points(unit.nearestStrength(strength)) : step.points(strength);
    }

    private static long price(UnitView unit, Entry entry) {
        long points = strength(unit, entry.strength().orElseGet(unit::leastStrength));
        for (Taken taken : entry.options()) {
            OptionView option = unit.options().get(taken.option());
            points += option == null || taken.count() <= 0 ? 0 : option.cost().times(taken.count());
        }
        return points;
    }

    /**
     * The points moved by taking a unit in another way: those of its strength and those of each option; an option that is
     * no longer offered goes at the price it was written for.
     */
    long altered(Node node, Variant variant) {
        UnitView unit = variant.unit();
        long moved = Math.abs(unit.points(variant.strength()) - strength(node)) + ended(node.entry(), unit);
        for (OptionView option : unit.options().values()) {
            int was = 0;
            for (Taken taken : node.entry().options()) {
                was += taken.option().equals(option.name()) ? Math.max(0, taken.count()) : 0;
            }
            int is = variant.times(option.name());
            moved += Math.abs(points(option, is) - points(option, was));
        }
        return moved;
    }

    /** What the options of an entry cost when it was written that are no longer offered. */
    private long ended(Entry entry, UnitView unit) {
        long points = 0;
        for (Taken taken : entry.options()) {
            if (taken.count() > 0 && !unit.options().containsKey(taken.option()) && then(entry) instanceof UnitView was) {
                OptionView option = was.options().get(taken.option());
                points += option == null ? 0 : Math.abs(option.cost().times(taken.count()));
            }
        }
        return points;
    }

    private static long points(OptionView option, int times) {
        return times == 0 ? 0 : option.cost().times(times);
    }

    /** The most that surcharges add to the price of one. */
    static long surcharge(UnitView unit) {
        long points = 0;
        for (Dearer dearer : unit.dearer()) {
            points += Math.max(0, dearer.points());
        }
        return points;
    }

    /** Whether any unit is dearer beyond some number. */
    boolean surcharged() {
        return surcharged;
    }

    private static boolean surcharged(Ruling ruling) {
        return ruling.choices().stream().anyMatch(choice -> choice instanceof UnitView unit && !unit.dearer().isEmpty());
    }

    /** The surcharges that move when so many of a unit are taken out of a part, and so many put in. */
    long surcharges(Id unit, Part part, long out, long in) {
        UnitView is = now.choice(unit) instanceof UnitView view ? view : null;
        UnitView was = written.choice(unit) instanceof UnitView view && !view.permission().outOfEra() ? view : is;
        if (is == null || is.dearer().isEmpty() && was.dearer().isEmpty()) {
            return 0;
        }
        long before = part.muster().count(is.index());
        long kept = before - out;
        return surcharges(was, before) - surcharges(was, kept) + surcharges(is, kept + in) - surcharges(is, kept);
    }

    /** What so many of a unit cost beyond their prices. */
    private static long surcharges(UnitView unit, long count) {
        long points = 0;
        for (Dearer dearer : unit.dearer()) {
            points += dearer.points() * Math.max(0, count - dearer.beyond());
        }
        return points;
    }
}
