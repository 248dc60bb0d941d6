package org.cantonment.desk.shopping;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cantonment.buying.plan.Bench;
import org.cantonment.domain.campaign.PlayDates;
import org.cantonment.domain.shelf.BenchTime;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.domain.shelf.WishBench;

/** What can be built before each round: as asked, else as the player wishes. For one question. */
final class Benches {
    private static final Pattern WORDS = Pattern.compile("(\\d{1,5}) +(hours?|minutes?|parts?)(?: +per +(round|week))?");
    private static final int MOST = 10_000;
    private static final int HOUR = 60;

    private final Optional<BenchTime> asked;
    private final Wishes wishes;
    private final List<String> undated = new ArrayList<>();
    private Optional<BenchTime> last = Optional.empty();
    private boolean several;

    Benches(Optional<BenchTime> asked, Wishes wishes) {
        this.asked = asked;
        this.wishes = wishes;
    }

    /**
     * Time at the bench as a person types it: "6 hours", "90 minutes", "4 parts", with "per round" or "per week" behind it.
     *
     * @throws Unclear if it is nothing of the kind
     */
    static BenchTime read(String text) throws Unclear {
        Matcher words = WORDS.matcher(text.strip());
        if (!words.matches() || Integer.parseInt(words.group(1)) > MOST) {
            throw new Unclear("'" + text + "' says no time at the bench; write it like '6 hours', '90 minutes' or '4 parts', with"
                    + " a number from 0 to " + MOST + ", and 'per week' behind it if it is for each week.");
        }
        int number = Integer.parseInt(words.group(1));
        boolean parts = words.group(2).startsWith("part");
        return new BenchTime(words.group(2).startsWith("hour") ? number * HOUR : number, parts ? Measure.PARTS : Measure.MINUTES,
                "week".equals(words.group(3)));
    }

    /**
     * What can be built before a round.
     *
     * @param ordered the day on which what is bought before it is ordered
     */
    Optional<Bench> before(Turn turn, LocalDate ordered) {
        Optional<BenchTime> time = asked.or(() -> wishes.in(turn.round().number()).stream().map(Wish::bench)
                .flatMap(Optional::stream).map(WishBench::time).findFirst());
        several |= time.isPresent() && last.isPresent() && !time.equals(last);
        last = time.or(() -> last);
        Optional<LocalDate> begins = turn.round().play().map(PlayDates::from);
        if (time.filter(BenchTime::perWeek).isPresent() && begins.isEmpty()) {
            undated.add(String.valueOf(turn.round().number()));
            return Optional.empty();
        }
        return time.map(one -> new Bench(one.measure(), one.perWeek()
                ? one.in(ChronoUnit.DAYS.between(ordered, begins.orElseThrow())) : one.most()));
    }

    /** "; at the bench 6 hours per round, as the player wishes", or nothing if nobody says. */
    String words() {
        return last.map(time -> "; at the bench " + (several ? "" : time.words() + ", ") + (asked.isPresent() ? "as asked"
                : "as the player wishes")).orElse("");
    }

    /** What could not be reckoned, in whole sentences. */
    List<String> remarks() {
        return undated.isEmpty() ? List.of() : List.of("Without dates of play nobody can tell how many weeks there are before "
                + (undated.size() == 1 ? "round " : "rounds ") + PlanText.and(undated) + "; no end of time at the bench is"
                + " reckoned with there.");
    }
}
