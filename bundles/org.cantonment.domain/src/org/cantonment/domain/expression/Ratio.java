package org.cantonment.domain.expression;

import java.math.BigInteger;

/**
 * An exact fraction in its lowest terms. Neither side goes beyond {@link #MOST}; what would is {@link #BEYOND}, and so is
 * all that is worked out of that.
 *
 * @param divisor at least 1; 0 for what is beyond
 */
public record Ratio(long number, long divisor) implements Comparable<Ratio> {

    /** The greatest number and the greatest divisor. */
    public static final long MOST = 1_000_000_000_000_000L;

    /** Beyond all measure; also what comes of dividing by nothing. */
    public static final Ratio BEYOND = new Ratio(0, 0);
    public static final Ratio ZERO = new Ratio(0, 1);
    public static final Ratio ONE = new Ratio(1, 1);

    private static final long SAFE = 1L << 30;

    /** A whole number. */
    public static Ratio of(long whole) {
        return whole == 0 ? ZERO : whole == 1 ? ONE : Math.abs(whole) <= MOST && whole != Long.MIN_VALUE
                ? new Ratio(whole, 1) : BEYOND;
    }

    /** A fraction; beyond all measure if the divisor is 0. */
    public static Ratio of(long number, long divisor) {
        return reduced(BigInteger.valueOf(number), BigInteger.valueOf(divisor));
    }

    private static Ratio reduced(BigInteger number, BigInteger divisor) {
        if (divisor.signum() == 0) {
            return BEYOND;
        }
        BigInteger common = number.gcd(divisor).multiply(BigInteger.valueOf(divisor.signum()));
        BigInteger top = number.divide(common);
        BigInteger bottom = divisor.divide(common);
        BigInteger most = BigInteger.valueOf(MOST);
        return top.abs().compareTo(most) > 0 || bottom.compareTo(most) > 0 ? BEYOND
                : new Ratio(top.longValue(), bottom.longValue());
    }

    /** Whether it is beyond all measure. */
    public boolean beyond() {
        return divisor == 0;
    }

    /** Whether it is a whole number. */
    public boolean whole() {
        return divisor == 1;
    }

    private boolean small() {
        return divisor == 1 && number < SAFE && number > -SAFE;
    }

    public Ratio plus(Ratio other) {
        if (small() && other.small()) {
            return of(number + other.number);
        }
        return beyond() || other.beyond() ? BEYOND
                : reduced(big(number).multiply(big(other.divisor)).add(big(other.number).multiply(big(divisor))),
                        big(divisor).multiply(big(other.divisor)));
    }

    public Ratio minus(Ratio other) {
        return plus(other.negated());
    }

    public Ratio negated() {
        return new Ratio(-number, divisor);
    }

    public Ratio times(Ratio other) {
        if (small() && other.small()) {
            return of(number * other.number);
        }
        return beyond() || other.beyond() ? BEYOND
                : reduced(big(number).multiply(big(other.number)), big(divisor).multiply(big(other.divisor)));
    }

    /** Beyond all measure if the other is 0. */
    public Ratio dividedBy(Ratio other) {
        return beyond() || other.beyond() ? BEYOND
                : reduced(big(number).multiply(big(other.divisor)), big(divisor).multiply(big(other.number)));
    }

    /** The next whole number that is not less. */
    public Ratio up() {
        return divisor <= 1 ? this : of(-Math.floorDiv(-number, divisor));
    }

    /** The next whole number that is not more. */
    public Ratio down() {
        return divisor <= 1 ? this : of(Math.floorDiv(number, divisor));
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }

    /** By size; what is beyond comes after all else. */
    @Override
    public int compareTo(Ratio other) {
        if (beyond() || other.beyond()) {
            return Boolean.compare(beyond(), other.beyond());
        }
        return divisor == 1 && other.divisor == 1 ? Long.compare(number, other.number)
                : big(number).multiply(big(other.divisor)).compareTo(big(other.number).multiply(big(divisor)));
    }

    /** "3", "-2", "7/4"; decimals where two are enough: "1.75". */
    @Override
    public String toString() {
        if (divisor == 1) {
            return Long.toString(number);
        }
        if (beyond()) {
            return "beyond all measure";
        }
        return 100 % divisor == 0 ? new java.math.BigDecimal(number).divide(java.math.BigDecimal.valueOf(divisor))
                .toPlainString() : number + "/" + divisor;
    }
}
