package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Price;
import org.cantonment.domain.range.Printing;
import org.cantonment.domain.range.Stock;
import org.cantonment.model.book.BookPackage;
import org.cantonment.model.book.Line;
import org.cantonment.model.range.Builds;
import org.cantonment.model.range.Code;
import org.cantonment.model.range.Contents;
import org.cantonment.model.range.InsteadOf;
import org.cantonment.model.range.RangePackage;
import org.cantonment.model.range.Sold;
import org.cantonment.model.range.Takes;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.reading.Under.Taken;

/** Reads boxes with their printings, and the parts that lie in them. */
final class BoxReader {

    /** What a box, a printing and a mixed lot have in common. */
    record Inside(List<Content> contents, List<Cap> caps) {
        Inside() {
            this(new ArrayList<>(), new ArrayList<>());
        }
    }

    private final Reading reading;
    private final Phrases phrases;
    private final RangeCircles circles;

    BoxReader(Reading reading, Phrases phrases, RangeCircles circles) {
        this.reading = reading;
        this.phrases = phrases;
        this.circles = circles;
    }

    // ------------------------------------------------------------------ parts

    Part part(org.cantonment.model.range.Part part) {
        Id id = reading.id(part);
        List<Build> builds = new ArrayList<>();
        List<Cap> caps = new ArrayList<>();
        Said<Fixing> fixing = new Said<>(reading);
        Said<Integer> minutes = new Said<>(reading);
        Under.each(reading, id, part.getLines(), Under.words("part", part), (line, at) -> {
            if (line instanceof Builds build) {
                build(part, build, at).ifPresent(builds::add);
            } else if (line instanceof org.cantonment.model.range.Fixing said) {
                fixing.say(said, fixing(said.isGlued(), said.isGames(), said.isBench()));
            } else if (line instanceof Takes takes) {
                OptionalInt said = phrases.minutes(takes.getDuration(), 1);
                minutes.say(takes, said.isPresent() ? Optional.of(said.getAsInt()) : Optional.empty());
            } else if (line instanceof org.cantonment.model.range.Cap cap) {
                Things.cap(cap, at).ifPresent(caps::add);
            } else {
                return Taken.NO;
            }
            return Taken.ALONE;
        });
        if (part.getLines().stream().noneMatch(Builds.class::isInstance)) {
            reading.problem(part, BookPackage.Literals.NAMED__NAME, Severity.CAUTION, Codes.BUILDS_NOTHING,
                    "Nothing is built of this part; say what is, as in '. builds 3 Carrier'.");
        }
        return new Part(id, Reading.label(part), fixing.value().orElse(Fixing.GLUED), builds, caps, Said.number(minutes),
                Reading.notes(part.getLines()));
    }

    private Optional<Build> build(org.cantonment.model.range.Part part, Builds build, Id id) {
        List<Content> gives = Things.contents(circles.outside(part, build.getThings()));
        List<Content> leaves = Things.contents(circles.outside(part, build.getBits()));
        OptionalInt minutes = phrases.minutes(build.getTakes(), 1);
        return gives.isEmpty() ? Optional.empty() : Optional.of(new Build(id, gives, leaves, minutes));
    }

    /** @return the fixing; empty for a line that does not say it to the end */
    static Optional<Fixing> fixing(boolean glued, boolean games, boolean bench) {
        if (glued) {
            return Optional.of(Fixing.GLUED);
        }
        return games ? Optional.of(Fixing.LOOSE_BETWEEN_GAMES)
                : bench ? Optional.of(Fixing.LOOSE_AT_BENCH) : Optional.empty();
    }

    // ------------------------------------------------------------------ boxes

    /** The lines of one box as they come in. */
    private final class BoxLines {
        private final org.cantonment.model.range.Box box;
        private final Inside inside = new Inside();
        private final List<Price> prices = new ArrayList<>();
        private final List<Validity> sold = new ArrayList<>();
        private final List<Stock> stock = new ArrayList<>();
        private final List<String> codes = new ArrayList<>();
        private final List<Printing> printings = new ArrayList<>();
        private final List<Content> insteadOf = new ArrayList<>();

        BoxLines(org.cantonment.model.range.Box box) {
            this.box = box;
        }

        Taken take(Line line, Id id) {
            if (line instanceof org.cantonment.model.range.Printing printing) {
                printings.add(printing(box, printing));
                return Taken.WITH_LINES;
            }
            if (line instanceof org.cantonment.model.range.Price price) {
                phrases.money(price.getMoney())
                        .ifPresent(money -> prices.add(new Price(id, money, phrases.when(price.getWhen()))));
            } else if (line instanceof Sold when) {
                sold.add(phrases.when(when.getWhen()));
            } else if (line instanceof org.cantonment.model.range.Stock there) {
                stock(there, id).ifPresent(stock::add);
            } else if (line instanceof Code code) {
                codes.add(Reading.text(code.getText()));
            } else if (line instanceof InsteadOf instead) {
                insteadOf.addAll(Things.contents(circles.outside(box, instead.getThings())));
            } else {
                return inside(inside, box, line, id);
            }
            return Taken.ALONE;
        }
    }

    Box box(org.cantonment.model.range.Box box) {
        Id id = reading.id(box);
        BoxLines lines = new BoxLines(box);
        Under.each(reading, id, box.getLines(), Under.words(box.isBundle() ? "bundle" : "box", box), lines::take);
        boolean holds = box.getLines().stream()
                .anyMatch(line -> line instanceof Contents || line instanceof org.cantonment.model.range.Printing);
        if (!holds) {
            reading.problem(box, BookPackage.Literals.NAMED__NAME, Severity.NOTE, Codes.BOX_EMPTY,
                    "Nothing is said to lie in this box.");
        }
        return new Box(id, Reading.label(box), box.isBundle(), lines.inside.contents(), lines.inside.caps(),
                lines.prices, lines.sold, lines.stock, lines.codes, lines.printings, lines.insteadOf,
                Reading.notes(box.getLines()));
    }

    /** Reads a line that says what lies in something; the holder is null for what nothing can hold. */
    Taken inside(Inside inside, org.cantonment.model.range.Box holder, Line line, Id id) {
        if (line instanceof Contents contents) {
            inside.contents().addAll(Things.contents(
                    holder == null ? contents.getThings() : circles.outside(holder, contents.getThings())));
            return Taken.ALONE;
        }
        if (line instanceof org.cantonment.model.range.Cap cap) {
            Things.cap(cap, id).ifPresent(inside.caps()::add);
            return Taken.ALONE;
        }
        return Taken.NO;
    }

    private Printing printing(org.cantonment.model.range.Box box, org.cantonment.model.range.Printing printing) {
        Id id = reading.id(printing);
        Inside inside = new Inside();
        Under.each(reading, id, printing.getLines(), Under.words("printing", printing),
                (line, at) -> inside(inside, box, line, at));
        return new Printing(id, Reading.label(printing), phrases.when(printing.getWhen()), inside.contents(),
                inside.caps(), Reading.notes(printing.getLines()));
    }

    private Optional<Stock> stock(org.cantonment.model.range.Stock stock, Id id) {
        Optional<LocalDate> on = phrases.date(stock, RangePackage.Literals.STOCK__DATE, stock.getDate());
        return stock.getCount() == null ? Optional.empty() : Optional.of(new Stock(id, stock.getCount(), on));
    }
}
