package org.cantonment.stock.tests;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Bits;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Printing;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Item;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.cantonment.domain.rules.Unit;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Made;
import org.cantonment.domain.shelf.MadeAct;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;

/** Puts together small ranges, shelves and cards. Names without a book are those of the range. */
final class Things {

    private final List<Family> families = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Bits> bits = new ArrayList<>();
    private final List<Box> boxes = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();
    private final List<Holding> holdings = new ArrayList<>();
    private int lines;

    static Id id(String name) {
        return name.contains("/") ? Id.of(name) : Id.of("Range", name);
    }

    static List<Id> ids(String... names) {
        return Arrays.stream(names).map(Things::id).toList();
    }

    static Requirement need(String entry, int count, String... anyOf) {
        return new Requirement(Id.of("List", entry), count, ids(anyOf));
    }

    static Requirement needOf(String entry, String unit, int count, String... anyOf) {
        return new Requirement(Id.of("List", entry), Optional.of(Id.of("Book", unit)), count, ids(anyOf));
    }

    Things family(String name, String in) {
        families.add(new Family(id(name), "", Optional.ofNullable(in).map(Things::id), List.of()));
        return this;
    }

    Things piece(String name, String family) {
        pieces.add(new Piece(id(name), "", Optional.ofNullable(family).map(Things::id), List.of()));
        return this;
    }

    /** Contents as "2 Spotter" or "Officer", "guessed" or "unknown" before them. */
    static List<Content> contents(String... texts) {
        return Arrays.stream(texts).map(text -> {
            String[] words = text.split(" ");
            Certainty certainty = words[0].equals("guessed") ? Certainty.GUESSED
                    : words[0].equals("unknown") ? Certainty.UNKNOWN : Certainty.KNOWN;
            int at = certainty == Certainty.KNOWN ? 0 : 1;
            boolean counted = Character.isDigit(words[at].charAt(0));
            return new Content(certainty, counted ? Integer.parseInt(words[at]) : 1, id(words[counted ? at + 1 : at]));
        }).toList();
    }

    Things bits(String name) {
        bits.add(new Bits(id(name), "", List.of()));
        return this;
    }

    /** Each way as "3 Foot + Bell", or "2 Spotter leaves 2 Wheels". */
    Things part(String name, Fixing fixing, String... ways) {
        List<Build> builds = new ArrayList<>();
        for (String way : ways) {
            String[] halves = way.split(" leaves ");
            builds.add(new Build(id(name).line(builds.size() + 1), contents(halves[0].split(" \\+ ")),
                    halves.length == 1 ? List.of() : contents(halves[1].split(" \\+ "))));
        }
        parts.add(new Part(id(name), "", fixing, builds, List.of(), List.of()));
        return this;
    }

    Things part(String name, String... ways) {
        return part(name, Fixing.GLUED, ways);
    }

    Things box(String name, String... contents) {
        return box(name, List.of(), List.of(), contents);
    }

    Things box(String name, List<Cap> caps, List<Printing> printings, String... contents) {
        boxes.add(new Box(id(name), "", false, contents(contents), caps, List.of(), List.of(), List.of(), List.of(),
                printings, List.of(), List.of()));
        return this;
    }

    static Cap cap(int most, String... of) {
        return new Cap(Id.of("Range/Cap" + most + String.join("", of).replace('/', '-')), most, ids(of));
    }

    static Printing printing(String name, Validity when, String... contents) {
        return new Printing(id(name), "", when, contents(contents), List.of(), List.of());
    }

    /** A unit that needs this, each need as "4 Crank-Car or Pike-Car". */
    Things unit(String name, String... needs) {
        List<Need> all = new ArrayList<>();
        for (String need : needs) {
            String[] words = need.split(" ", 2);
            all.add(new Need(Integer.parseInt(words[0]), ids(words[1].split(" or "))));
        }
        Id unit = Id.of("Book", name);
        units.add(new Unit(unit, "", List.of(new Needs(unit.line(1), false, all, Validity.ALWAYS)), List.of()));
        return this;
    }

    /** Lays a thing on the shelf; what became of it as "built 3 Carrier, 2 Spotter". */
    Things has(String text, String... made) {
        Content content = contents(text).get(0);
        return has(content, Optional.empty(), Optional.empty(), Optional.empty(), made);
    }

    Things has(
            Content content, Optional<Fixing> fixing, Optional<Id> printing, Optional<LocalDate> on, String... made) {
        Id line = Id.of("Shelf").line(++lines);
        List<Made> all = new ArrayList<>();
        for (String one : made) {
            String[] words = one.split(" ", 2);
            all.add(new Made(line.line(all.size() + 1), MadeAct.valueOf(words[0].toUpperCase(Locale.ROOT)),
                    contents(words[1].split(", ")).stream()
                            .map(held -> new Held(held.count(), held.what(), Optional.empty())).toList()));
        }
        holdings.add(new Holding(line, content.certainty(), content.count(), content.what(), List.of(), fixing,
                Optional.empty(), on, Optional.empty(), printing, all, List.of()));
        return this;
    }

    Catalogue catalogue() {
        Range range = new Range(Id.of("Range"), "", Optional.empty(), families, pieces, parts, List.of(), bits, boxes,
                List.of(), List.of());
        return Catalogue.of(List.of(range), List.of(book()));
    }

    private RuleSet book() {
        return new RuleSet(Id.of("Book"), "", List.of(), Validity.ALWAYS, List.of(), List.of(), List.of(),
                List.of(new Item(Id.of("Book/Bridge"), "", List.of())), units, List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of());
    }

    Shelf shelf() {
        return new Shelf(Id.of("Shelf"), false, List.of(), Optional.empty(), Optional.empty(), holdings, List.of(),
                List.of(), List.of());
    }

    /** What the shelf is enough for, under a card with these facts. */
    Depot depot(Fact... facts) {
        Catalogue catalogue = catalogue();
        return Depot.of(catalogue, Supply.of(catalogue, List.of(shelf())),
                Allowance.of(catalogue, List.of(card(facts)), Optional.empty(), Terms.ANY));
    }

    static Likeness card(Fact... facts) {
        return new Likeness(Id.of("Book/Card"), "", List.of(facts), List.of());
    }

    static Fact allows(Level level) {
        return new Allows(Id.of("Book/Card#allows"), level, Validity.ALWAYS);
    }

    static Stands lets(String what, String standFor) {
        return lets(what, standFor, OptionalInt.empty());
    }

    static Stands lets(String what, String standFor, OptionalInt percent) {
        return new Stands(Id.of("Book/Card#" + what.replace('/', '-') + "-for-" + standFor.replace('/', '-')), ids(what),
                ids(standFor), percent, false, Validity.ALWAYS);
    }

    static Turns turns(String from, String to, OptionalInt times) {
        return turns("turns-" + to.replace(' ', '-'), from, to, times);
    }

    static Turns turns(String line, String from, String to, OptionalInt times) {
        return new Turns(Id.of("Book/Card#" + line), contents(from.split(" and ")),
                contents(to).get(0), times, Validity.ALWAYS);
    }

    static OneTable oneTable() {
        return new OneTable(Id.of("Book/Card#one"), Validity.ALWAYS);
    }
}
