package org.cantonment.notation.reading;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InEras;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.Moment;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.OfRound;
import org.cantonment.domain.common.OfWeek;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.When;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.book.BookPackage;
import org.cantonment.model.book.Duration;
import org.cantonment.model.book.FromThen;
import org.cantonment.model.book.UpTo;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The small phrases that every book uses: money, dates, spans, and when a line holds. */
public final class Phrases {

    private static final Pattern DATE = Pattern.compile("(\\d{1,4})-(\\d{1,2})-(\\d{1,2})");
    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
    private static final int MOST_DIGITS = 12;
    private static final int HOUR = 60;
    private static final int LONGEST = 10_000;

    private final Reading reading;
    private final Optional<CurrencyUnit> currency;

    private Phrases(Reading reading, Optional<CurrencyUnit> currency) {
        this.reading = reading;
        this.currency = currency;
    }

    /**
     * @param reading the book
     * @param at      the heading that may say the book's currency
     * @param feature where it says it; null if such a book has none
     * @param code    the currency's code as written; null if none was
     */
    public static Phrases of(Reading reading, EObject at, EStructuralFeature feature, String code) {
        return new Phrases(reading, currency(reading, at, feature, code));
    }

    /** @return the same with the currency of a part of the book, if it says one */
    public Phrases in(EObject at, EStructuralFeature feature, String code) {
        return code == null ? this : new Phrases(reading, currency(reading, at, feature, code));
    }

    /** @return the currency that prices without one are in */
    public Optional<CurrencyUnit> currency() {
        return currency;
    }

    private static Optional<CurrencyUnit> currency(Reading reading, EObject at, EStructuralFeature feature, String code) {
        if (code == null) {
            return Optional.empty();
        }
        Optional<CurrencyUnit> unit = org.cantonment.domain.common.Amounts.currency(code);
        if (unit.isEmpty()) {
            reading.problem(at, feature, Severity.BREACH, Codes.CURRENCY,
                    "'" + code + "' is no currency; write its three letters of ISO 4217, as in EUR.");
        }
        return unit;
    }

    /** @return the money, or empty with a finding if it has no currency or too many decimals; empty if none is said */
    public Optional<Money> money(org.cantonment.model.book.Money money) {
        if (money == null || money.getAmount() == null) {
            return Optional.empty();
        }
        Optional<CurrencyUnit> unit = money.getCurrency() == null ? currency
                : currency(reading, money, BookPackage.Literals.MONEY__CURRENCY, money.getCurrency());
        if (unit.isEmpty()) {
            if (money.getCurrency() == null) {
                reading.problem(money, null, Severity.BREACH, Codes.CURRENCY, "A price needs its currency, as in "
                        + money.getAmount() + " EUR; or the book's first line says it: 'in EUR'.");
            }
            return Optional.empty();
        }
        return decimal(money, BookPackage.Literals.MONEY__AMOUNT, money.getAmount()).flatMap(amount -> {
            Optional<Money> exact = org.cantonment.domain.common.Amounts.money(unit.get(), amount);
            if (exact.isEmpty()) {
                reading.problem(money, BookPackage.Literals.MONEY__AMOUNT, Severity.BREACH, Codes.AMOUNT,
                        unit.get().getCode() + " has " + unit.get().getDecimalPlaces() + " decimals, no more.");
            }
            return exact;
        });
    }

    /** @return an exact amount from 0, or empty with a finding if it is absurd */
    public Optional<BigDecimal> decimal(EObject at, EStructuralFeature feature, String text) {
        if (text == null) {
            return Optional.empty();
        }
        if (text.startsWith("-") || text.length() > MOST_DIGITS) {
            reading.problem(at, feature, Severity.BREACH, Codes.NUMBER_RANGE,
                    text.startsWith("-") ? "An amount here is at least 0." : "This amount is beyond all measure.");
            return Optional.empty();
        }
        return NUMBER.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
    }

    /** @return the day, or empty with a finding if no calendar has it; empty if none is said */
    public Optional<LocalDate> date(EObject at, EStructuralFeature feature, String text) {
        if (text == null) {
            return Optional.empty();
        }
        Matcher matcher = DATE.matcher(text);
        if (!matcher.matches()) {
            reading.problem(at, feature, Severity.BREACH, Codes.DATE_FORM, "A date is written like 2031-04-15.");
            return Optional.empty();
        }
        int year = Integer.parseInt(matcher.group(1));
        int month = Integer.parseInt(matcher.group(2));
        int day = Integer.parseInt(matcher.group(3));
        try {
            LocalDate date = LocalDate.of(year, month, day);
            if (!date.toString().equals(text)) {
                reading.problem(at, feature, Severity.CAUTION, Codes.DATE_FORM, "Write " + date + ".", date.toString());
            }
            return Optional.of(date);
        } catch (DateTimeException none) {
            reading.problem(at, feature, Severity.BREACH, Codes.DATE_NONE, noSuchDay(year, month, day));
            return Optional.empty();
        }
    }

    private static String noSuchDay(int year, int month, int day) {
        if (month < 1 || month > 12) {
            return "A year has months 1 to 12, not " + month + ".";
        }
        return "Month " + month + " of " + year + " has " + YearMonth.of(year, month).lengthOfMonth() + " days, not "
                + day + ".";
    }

    /** @return the time of day, or empty with a finding if no clock shows it; empty if none is said */
    public Optional<LocalTime> time(EObject at, EStructuralFeature feature, String text) {
        if (text == null) {
            return Optional.empty();
        }
        String[] parts = text.replaceAll("\\s", "").split(":");
        try {
            return Optional.of(LocalTime.of(Integer.parseInt(parts.length > 0 ? parts[0] : ""),
                    Integer.parseInt(parts.length > 1 ? parts[1] : "")));
        } catch (DateTimeException | NumberFormatException none) {
            reading.problem(at, feature, Severity.BREACH, Codes.TIME, "A time of day is written like 20:00.");
            return Optional.empty();
        }
    }

    /** @return the span; a plain number is exactly that many */
    public Span span(org.cantonment.model.book.Span span) {
        if (span == null) {
            return Span.exactly(1);
        }
        if (span.getMin() == null) {
            return Span.atMost(Reading.number(span.getMax(), 0));
        }
        if (span.getMax() != null) {
            if (span.getMax() < span.getMin()) {
                reading.problem(span, BookPackage.Literals.SPAN__MAX, Severity.BREACH, Codes.NUMBER_RANGE,
                        "From " + span.getMin() + " to " + span.getMax() + " there is nothing; did you mean "
                                + span.getMax() + " to " + span.getMin() + "?");
                return Span.of(span.getMax(), span.getMin());
            }
            return Span.of(span.getMin(), span.getMax());
        }
        boolean atLeast = !span.isExact() && startsWithAt(span);
        return atLeast ? Span.atLeast(span.getMin()) : Span.exactly(span.getMin());
    }

    private static boolean startsWithAt(org.cantonment.model.book.Span span) {
        var node = org.eclipse.xtext.nodemodel.util.NodeModelUtils.findActualNodeFor(span);
        return node != null && org.eclipse.xtext.nodemodel.util.NodeModelUtils.getTokenText(node).startsWith("at");
    }

    /** @return when a line holds; always, if it does not say */
    public Validity when(List<org.cantonment.model.book.When> said) {
        if (said.isEmpty()) {
            return Validity.of();
        }
        List<When> conditions = new ArrayList<>(said.size());
        for (org.cantonment.model.book.When each : said) {
            if (each instanceof FromThen from) {
                moment(from.getMoment()).ifPresent(m -> conditions.add(new Reach(Optional.of(m), Optional.empty())));
            } else if (each instanceof UpTo to) {
                moment(to.getMoment()).ifPresent(m -> upTo(conditions, m));
            } else if (each instanceof org.cantonment.model.book.InRounds rounds) {
                conditions.add(rounds(rounds));
            } else if (each instanceof org.cantonment.model.book.InEras eras) {
                List<Id> ids = Reading.refs(eras.getEras());
                if (!ids.isEmpty()) {
                    conditions.add(new InEras(ids));
                }
            }
        }
        return Validity.of(conditions.toArray(When[]::new));
    }

    /** "from … to …" is one reach. */
    private static void upTo(List<When> conditions, Moment end) {
        int last = conditions.size() - 1;
        if (last >= 0 && conditions.get(last) instanceof Reach open && open.to().isEmpty()) {
            conditions.set(last, new Reach(open.from(), Optional.of(end)));
        } else {
            conditions.add(new Reach(Optional.empty(), Optional.of(end)));
        }
    }

    private InRounds rounds(org.cantonment.model.book.InRounds rounds) {
        int first = reading.atLeastOne(rounds, BookPackage.Literals.IN_ROUNDS__FIRST, rounds.getFirst());
        return rounds(rounds, BookPackage.Literals.IN_ROUNDS__LAST, first, rounds.getLast());
    }

    /** @return the rounds from first to last; a finding is made if last comes before first */
    public InRounds rounds(EObject at, EStructuralFeature feature, int first, Integer last) {
        if (last != null && last < first) {
            reading.problem(at, feature, Severity.BREACH, Codes.NUMBER_RANGE,
                    "Rounds " + first + " to " + last + " are none.");
            return new InRounds(first, first);
        }
        return new InRounds(first, last == null ? first : last);
    }

    private Optional<Moment> moment(org.cantonment.model.book.Moment moment) {
        if (moment instanceof org.cantonment.model.book.OnDate on) {
            return date(on, BookPackage.Literals.ON_DATE__DATE, on.getDate()).map(OnDate::new);
        }
        if (moment instanceof org.cantonment.model.book.OfRound of) {
            return Optional.of(new OfRound(reading.atLeastOne(of, BookPackage.Literals.OF_ROUND__NUMBER, of.getNumber())));
        }
        if (moment instanceof org.cantonment.model.book.OfWeek of) {
            return Optional.of(new OfWeek(reading.atLeastOne(of, BookPackage.Literals.OF_WEEK__NUMBER, of.getNumber())));
        }
        return moment instanceof org.cantonment.model.book.OfEra of ? Reading.ref(of.getEra()).map(OfEra::new)
                : Optional.empty();
    }

    /**
     * @param least the least number that makes sense, 0 or 1
     * @return how long it is in minutes, or empty with a finding if it is absurd; empty if none is said to the end
     */
    public OptionalInt minutes(Duration duration, int least) {
        if (duration == null || duration.getNumber() == null || duration.getUnit() == null) {
            return OptionalInt.empty();
        }
        OptionalInt number = within(duration, BookPackage.Literals.DURATION__NUMBER, duration.getNumber(), least);
        return number.isEmpty() || !duration.getUnit().startsWith("hour") ? number : OptionalInt.of(number.getAsInt() * HOUR);
    }

    /** @return a number from least to 10,000, or empty with a finding */
    public OptionalInt within(EObject at, EStructuralFeature feature, int number, int least) {
        if (number < least || number > LONGEST) {
            reading.problem(at, feature, Severity.BREACH, Codes.NUMBER_RANGE, "A number at the bench is from " + least
                    + " to 10,000; this line is left out.");
            return OptionalInt.empty();
        }
        return OptionalInt.of(number);
    }

    /** @return a number that was said, at least 1 */
    public OptionalInt positive(EObject at, EStructuralFeature feature, Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(reading.atLeastOne(at, feature, value));
    }
}
