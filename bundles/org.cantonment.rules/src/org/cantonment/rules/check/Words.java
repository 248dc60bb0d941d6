package org.cantonment.rules.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import org.cantonment.rules.muster.Node;

/** Small pieces of the sentences that findings are made of. */
final class Words {

    private Words() {
    }

    /** "1 point", "2 points". */
    static String points(long points) {
        return points == 1 || points == -1 ? points + " point" : points + " points";
    }

    /** "Tread troop of 5", or "2 Tread troop of 5"; a formation by its title or its own name. */
    static String entry(Node node) {
        String name = node.entry().label().isEmpty() ? node.choice().title() : node.entry().label();
        String of = node.unit() != null && node.entry().strength().isPresent() ? " of " + node.strength() : "";
        return (node.count() == 1 ? "" : node.count() + " ") + name + of;
    }

    /** A fraction with as many decimals as it takes, at most two, rounded down. */
    static String fraction(long numerator, long denominator) {
        if (denominator == 1) {
            return Long.toString(numerator);
        }
        return BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator), 2, RoundingMode.FLOOR)
                .stripTrailingZeros().toPlainString();
    }

    /** "A", "A and B", "A, B and C". */
    static String and(List<String> words) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < words.size(); i++) {
            text.append(i == 0 ? "" : i == words.size() - 1 ? " and " : ", ").append(words.get(i));
        }
        return text.toString();
    }
}
