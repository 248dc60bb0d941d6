package org.cantonment.desk.tests.outside.expressions;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Predicate;

import org.apache.commons.jexl3.JexlScript;

/** What the other language lacks: rounding of quotients, and plain loops over entries. */
public final class Reckoner {

    /** So many units in one formation, or outside any. */
    record Some(String unit, String kind, int count, int strength, int each, int options, int squad) {
    }

    /** The quotient rounded up. */
    public BigDecimal up(BigDecimal number, BigDecimal by) {
        return number.divide(by, 0, RoundingMode.CEILING);
    }

    /** The quotient rounded down. */
    public BigDecimal down(BigDecimal number, BigDecimal by) {
        return number.divide(by, 0, RoundingMode.FLOOR);
    }

    public BigDecimal least(BigDecimal one, BigDecimal other) {
        return one.min(other);
    }

    public BigDecimal greatest(BigDecimal one, BigDecimal other) {
        return one.max(other);
    }

    public BigDecimal count(List<Some> some, String who) {
        return total(some, who, each -> true, 0);
    }

    public BigDecimal strength(List<Some> some, String who) {
        return total(some, who, each -> true, 1);
    }

    public BigDecimal points(List<Some> some, String who) {
        return total(some, who, each -> true, 2);
    }

    public BigDecimal options(List<Some> some, String who) {
        return total(some, who, each -> true, 3);
    }

    public BigDecimal different(List<Some> some, String who) {
        return BigDecimal.valueOf(some.stream().filter(each -> meant(each, who)).map(Some::unit).distinct().count());
    }

    private static BigDecimal total(List<Some> some, String who, Predicate<Some> also, int what) {
        long sum = 0;
        for (Some each : some) {
            if (meant(each, who) && also.test(each)) {
                long one = what == 0 ? 1 : what == 1 ? each.strength() : what == 2 ? each.each() : each.options();
                sum += one * each.count();
            }
        }
        return BigDecimal.valueOf(sum);
    }

    private static boolean meant(Some each, String who) {
        return who.equals("units") || each.unit().equals(who) || each.kind().equals(who);
    }

    public BigDecimal sum(List<List<Some>> squads, JexlScript of) {
        return squads.stream().map(squad -> (BigDecimal) of.execute(null, squad)).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal greatest(List<List<Some>> squads, JexlScript of) {
        return squads.stream().map(squad -> (BigDecimal) of.execute(null, squad)).reduce(BigDecimal::max).orElseThrow();
    }

    public BigDecimal least(List<List<Some>> squads, JexlScript of) {
        return squads.stream().map(squad -> (BigDecimal) of.execute(null, squad)).reduce(BigDecimal::min).orElseThrow();
    }

    public boolean each(List<List<Some>> squads, JexlScript has) {
        return squads.stream().allMatch(squad -> (Boolean) has.execute(null, squad));
    }

    public boolean any(List<List<Some>> squads, JexlScript has) {
        return squads.stream().anyMatch(squad -> (Boolean) has.execute(null, squad));
    }
}
