package org.cantonment.domain.common;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/** The time a question is asked for: the era, round, week and day, so far as they are known. */
public record Occasion(Optional<Id> era, OptionalInt round, OptionalInt week, Optional<LocalDate> date) {

    /** Nothing is known of the time. */
    public static final Occasion UNKNOWN =
            new Occasion(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty());

    /** An era, and nothing else. */
    public static Occasion in(Id era) {
        return new Occasion(Optional.of(era), OptionalInt.empty(), OptionalInt.empty(), Optional.empty());
    }

    /** A day, and nothing else. */
    public static Occasion on(LocalDate date) {
        return new Occasion(Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.of(date));
    }

    /** The same in another era. */
    public Occasion withEra(Id other) {
        return new Occasion(Optional.of(other), round, week, date);
    }

    /** The same in a round. */
    public Occasion withRound(int number) {
        return new Occasion(era, OptionalInt.of(number), week, date);
    }

    /** Whether the moment has come: it is this one or lies before it. */
    boolean reaches(Moment moment, EraOrder eras) {
        if (moment instanceof OnDate on) {
            return date.isPresent() && !date.get().isBefore(on.date());
        }
        if (moment instanceof OfRound of) {
            return round.isPresent() && round.getAsInt() >= of.number();
        }
        if (moment instanceof OfWeek of) {
            return week.isPresent() && week.getAsInt() >= of.number();
        }
        return era.isPresent() && eras.follows(era.get(), ((OfEra) moment).era());
    }

    /** Whether the moment has not passed: it is this one or lies after it. */
    boolean notBeyond(Moment moment, EraOrder eras) {
        if (moment instanceof OnDate on) {
            return date.isPresent() && !date.get().isAfter(on.date());
        }
        if (moment instanceof OfRound of) {
            return round.isPresent() && round.getAsInt() <= of.number();
        }
        if (moment instanceof OfWeek of) {
            return week.isPresent() && week.getAsInt() <= of.number();
        }
        return era.isPresent() && eras.follows(((OfEra) moment).era(), era.get());
    }
}
