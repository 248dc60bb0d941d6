package org.cantonment.rules.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Arithmetic;
import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.EraIs;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.Logic;
import org.cantonment.domain.expression.NameUse;
import org.cantonment.domain.expression.Negation;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Quantity.Measure;
import org.cantonment.domain.expression.Quantity.Stretch;
import org.cantonment.domain.expression.Rounded;
import org.cantonment.domain.expression.Selection;
import org.cantonment.domain.expression.YesNo;

/** Says an expression as the notation does, with titles in the place of names. */
public final class Phrasing {

    private final Function<Id, String> titles;

    /** Says things under their titles. */
    public Phrasing(Function<Id, String> titles) {
        this.titles = titles;
    }

    /** The expression in words. */
    public String words(Expression said) {
        if (said instanceof Figure figure) {
            return figure.value().toString();
        }
        if (said instanceof NameUse name) {
            return name.name();
        }
        if (said instanceof Quantity quantity) {
            return quantity(quantity);
        }
        if (said instanceof Comparison comparison) {
            return words(comparison.left()) + ' ' + comparison.relation().words() + ' ' + words(comparison.right());
        }
        if (said instanceof Arithmetic arithmetic) {
            return words(arithmetic.left()) + ' ' + arithmetic.operator().words() + ' ' + words(arithmetic.right());
        }
        if (said instanceof Rounded rounded) {
            return words(rounded.number()) + (rounded.up() ? " rounded up" : " rounded down");
        }
        if (said instanceof Logic logic) {
            return String.join(logic.all() ? " and " : " or ", logic.parts().stream().map(this::words).toList());
        }
        if (said instanceof Negation negation) {
            return "not " + words(negation.of());
        }
        return said instanceof Gathering gathering ? gathering(gathering) : asked(said);
    }

    private String asked(Expression said) {
        if (said instanceof YesNo answer) {
            return answer.yes() ? "yes" : "no";
        }
        if (said instanceof Given given) {
            return given.what() == Given.What.POINTS_USED ? "points used" : "the " + lower(given.what());
        }
        if (said instanceof EraIs era) {
            return "the era is " + either(era.eras());
        }
        if (said instanceof Own own) {
            return "its " + lower(own.what());
        }
        if (said instanceof PiecesOf pieces) {
            return "pieces of " + either(pieces.what())
                    + (pieces.state() == PiecesOf.State.NEEDED ? "" : ' ' + lower(pieces.state()));
        }
        OptionsTaken options = (OptionsTaken) said;
        return (options.option().isEmpty() ? "options" : "option " + options.option().get()) + " on "
                + who(options.of(), "units", "formations");
    }

    private String quantity(Quantity quantity) {
        String who = who(quantity.of(), "units", "formations");
        String words = switch (quantity.measure()) {
            case DIFFERENT -> "count of different " + who;
            case KEPT, GONE, ADDED -> "count of " + who + ' ' + lower(quantity.measure());
            default -> lower(quantity.measure()) + " of " + who;
        };
        return quantity.in() == Stretch.HERE ? words : words + " in the " + lower(quantity.in()).replace('_', ' ');
    }

    private String gathering(Gathering gathering) {
        String body = words(gathering.body());
        String one = who(gathering.over(), "unit", "formation");
        return switch (gathering.act()) {
            case EACH, ANY -> lower(gathering.act()) + ' ' + one + " has " + body;
            case COUNT -> lower(Measure.COUNT) + " of " + who(gathering.over(), "units", "formations") + " with " + body;
            default -> lower(gathering.act()) + " per " + one + " of " + body;
        };
    }

    /** Those who are meant. */
    public String who(Selection of, String units, String formations) {
        return switch (of.breadth()) {
            case UNITS -> units;
            case FORMATIONS -> formations;
            case NAMED -> either(of.of());
        };
    }

    private String either(List<Id> ids) {
        List<String> names = new ArrayList<>();
        ids.forEach(id -> names.add(titles.apply(id)));
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
