package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.ListOf.some;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Arithmetic;
import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.Comparison.Relation;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.Logic;
import org.cantonment.domain.expression.NameUse;
import org.cantonment.domain.expression.Negation;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Quantity.Measure;
import org.cantonment.domain.expression.Quantity.Stretch;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.expression.Selection;
import org.cantonment.domain.expression.Type;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Always;
import org.cantonment.domain.rules.Let;
import org.cantonment.domain.rules.Provided;
import org.cantonment.domain.rules.Surcharge;

/** What the rules of a small case ask in expressions, drawn by its seed: limits, conditions, and prices that hang on others. */
final class SpokenRules {

    private static final int UNITS = SmallCase.UNITS;

    /** A unit costs so much more or less, for each of its strength or once, when there are at least so many of another. */
    record Toll(int unit, boolean cheaper, int amount, boolean each, int other, int from) {
    }

    final List<Toll> tolls = new ArrayList<>();
    /** Whether its rules ask what one entry costs: that must not hang on the order of the entries. */
    final boolean asksOwnPoints;
    private final Random random;
    private final int[] before = new int[UNITS];

    SpokenRules(Random random) {
        this.random = random;
        asksOwnPoints = random.nextBoolean();
        for (int u = 0; u < UNITS; u++) {
            before[u] = random.nextInt(3);
            if (random.nextInt(3) == 0) {
                tolls.add(new Toll(u, random.nextBoolean(), 1 + random.nextInt(4), random.nextInt(3) == 0,
                        random.nextInt(UNITS), 1 + random.nextInt(2)));
            }
        }
    }

    /** What a unit costs more or less in a list that has so many of each unit. */
    int toll(int unit, int strength, int[] counts) {
        int sum = 0;
        for (Toll toll : tolls) {
            if (toll.unit == unit && counts[toll.other] >= toll.from) {
                sum += (toll.cheaper ? -1 : 1) * toll.amount * (toll.each ? strength : 1);
            }
        }
        return sum;
    }

    /** The list of the round before. */
    ForceList before() {
        ListOf list = new ListOf("K", "B");
        for (int u = 0; u < UNITS; u++) {
            if (before[u] > 0) {
                list.add(some(before[u], "U" + u));
            }
        }
        return list.build();
    }

    List<Line> surcharges(int unit) {
        List<Line> lines = new ArrayList<>();
        for (Toll toll : tolls) {
            if (toll.unit == unit) {
                Expression many = compare(Relation.AT_LEAST, of(Measure.COUNT, toll.other), toll.from);
                lines.add(new Line((id, names, when) -> new Surcharge(id, toll.cheaper, figure(toll.amount), toll.each,
                        Optional.of(many), when)));
            }
        }
        return lines;
    }

    /** The lines of a limit: something that must always be so, or a plain line that holds under a condition. */
    Line[] limit(Supplier<Line> plain) {
        Expression one = asked();
        return switch (random.nextInt(6)) {
            case 0, 3 -> new Line[] {provided(one), plain.get()};
            case 1 -> new Line[] {let("Wanted", one), always(new Logic(false,
                    List.of(new Negation(new NameUse("Wanted", Type.YES_NO)), asked())))};
            case 2 -> new Line[] {provided(one), always(asked())};
            default -> new Line[] {always(one)};
        };
    }

    private static Line always(Expression expression) {
        return new Line((id, names, when) -> new Always(id, expression, when));
    }

    private static Line provided(Expression expression) {
        return new Line((id, names, when) -> new Provided(id, expression, when));
    }

    private static Line let(String name, Expression expression) {
        return new Line((id, names, when) -> new Let(id, name, expression, when));
    }

    private Expression asked() {
        Relation relation = random.nextBoolean() ? Relation.AT_LEAST : Relation.AT_MOST;
        int one = random.nextInt(UNITS);
        int other = random.nextInt(UNITS);
        Selection units = Selection.units();
        return switch (random.nextInt(12)) {
            case 0 -> compare(relation, of(Measure.COUNT, one), 1 + random.nextInt(2));
            case 1 -> new Comparison(relation, of(Measure.COUNT, one), of(Measure.COUNT, other));
            case 2 -> compare(relation, of(Measure.POINTS, one), 4 + random.nextInt(8));
            case 3 -> compare(relation, all(Measure.STRENGTH), 2 + random.nextInt(3));
            case 4 -> compare(relation, all(Measure.DIFFERENT), 2);
            case 5 -> new Comparison(Relation.AT_MOST, of(Measure.POINTS, one), new Arithmetic(Arithmetic.Operator.PERCENT_OF,
                    figure(40 + random.nextInt(40)), new Given(Given.What.POINTS_USED)));
            case 6 -> compare(Relation.AT_MOST, all(Measure.GONE), random.nextInt(3));
            case 7 -> compare(relation, all(Measure.KEPT), 1 + random.nextInt(2));
            case 8 -> compare(Relation.AT_MOST, all(Measure.ADDED), random.nextInt(3));
            case 9 -> new Gathering(random.nextBoolean() ? Gathering.Act.EACH : Gathering.Act.ANY, units,
                    asksOwnPoints
                            ? compare(relation, new Own(Own.What.POINTS), 5 + random.nextInt(5))
                            : compare(relation, new Own(Own.What.STRENGTH), 2));
            case 10 -> compare(relation, new OptionsTaken(Optional.empty(), units), 1);
            default -> compare(relation, new Gathering(Gathering.Act.COUNT, units,
                    compare(Relation.AT_LEAST, new Own(Own.What.STRENGTH), 2)), 1 + random.nextInt(2));
        };
    }

    private static Expression of(Measure measure, int unit) {
        return new Quantity(measure, Selection.of(Id.of("B", "U" + unit)), Stretch.HERE);
    }

    private static Expression all(Measure measure) {
        return new Quantity(measure, Selection.units(), Stretch.HERE);
    }

    private static Expression compare(Relation relation, Expression what, int with) {
        return new Comparison(relation, what, figure(with));
    }

    private static Expression figure(int number) {
        return new Figure(Ratio.of(number));
    }
}
