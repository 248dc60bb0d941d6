package org.cantonment.references.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Bits;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Discount;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Offer;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Postage;
import org.cantonment.domain.range.Price;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Seller;
import org.cantonment.domain.range.Stock;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Shelf;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Errands drawn from a seed. */
public final class Errands {

    private static final Id BITS = id("Bits");

    private final Random random;
    private final boolean small;
    private final List<Family> families = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Box> boxes = new ArrayList<>();
    private final List<Seller> sellers = new ArrayList<>();
    private final List<Fact> facts = new ArrayList<>();
    private final List<Holding> holdings = new ArrayList<>();
    private final List<Id> army = new ArrayList<>();

    private Errands(long seed, boolean small) {
        random = new Random(seed * 7919 + 17);
        this.small = small;
    }

    /** A few boxes and types with every feature: handfuls, caps, loose parts, stand-ins, shares, conversions, postage. */
    public static Errand small(long seed) {
        return new Errands(seed, true).draw(2 + (int) (seed % 6), 3 + (int) (seed / 6 % 5), 1 + (int) (seed / 30 % 3));
    }

    /** Many boxes, parts that are built as one piece of several, families in families, kindred pieces allowed. */
    public static Errand large(int boxes, int types, int lists, long seed) {
        return new Errands(seed, false).draw(boxes, types, lists);
    }

    private Errand draw(int boxCount, int types, int lists) {
        types(types);
        for (int k = 0; k < (small ? random.nextInt(4) : types / 3); k++) {
            part(k);
        }
        for (int b = 0; b < boxCount; b++) {
            box(b);
        }
        if (small) {
            sell();
            likeness();
        }
        facts.add(new Allows(id("Card").line(1), random.nextBoolean() || !small ? Level.KINDRED : Level.EXACT,
                Validity.ALWAYS));
        own();
        List<List<Requirement>> all = new ArrayList<>();
        for (int l = 0; l < lists; l++) {
            all.add(list(l));
        }
        Range range = new Range(Id.of("Works"), "", Optional.of(CurrencyUnit.EUR), families, pieces, parts, List.of(),
                List.of(new Bits(BITS, "", List.of())), boxes, sellers, List.of());
        return new Errand(range, new Shelf(Id.of("Shelf"), false, List.of(), Optional.empty(), Optional.empty(), holdings,
                List.of(), List.of(), List.of()), all, new Likeness(Id.of("Card"), "", facts, List.of()));
    }

    private static Id id(String name) {
        return Id.of("Works", name);
    }

    private void types(int count) {
        int wide = Math.max(1, count / 12);
        int narrow = Math.max(1, count / 4);
        for (int f = 0; f < wide; f++) {
            families.add(new Family(id("Wide-" + f), "", Optional.empty(), List.of()));
        }
        for (int f = 0; f < narrow; f++) {
            families.add(new Family(id("Family-" + f), "", Optional.of(id("Wide-" + random.nextInt(wide))), List.of()));
        }
        for (int t = 0; t < count; t++) {
            pieces.add(new Piece(id("T" + t), "", random.nextInt(6) == 0 ? Optional.empty()
                    : Optional.of(id("Family-" + random.nextInt(narrow))), List.of()));
        }
    }

    private Id type() {
        return pieces.get(random.nextInt(pieces.size())).id();
    }

    private static Content some(int count, Id what) {
        return new Content(Certainty.KNOWN, count, what);
    }

    private void part(int number) {
        Id part = id("Part-" + number);
        List<Build> builds = new ArrayList<>();
        for (int w = 0; w < 2 + random.nextInt(2); w++) {
            int pieces = small && random.nextInt(3) == 0 ? 2 + random.nextInt(2) : 1;
            List<Content> gives = new ArrayList<>(List.of(some(pieces, type())));
            if (small && random.nextInt(6) == 0) {
                gives.add(some(1, type()));
            }
            List<Content> leaves = small && random.nextInt(3) == 0 ? List.of(some(1 + random.nextInt(2), BITS)) : List.of();
            builds.add(new Build(part.line(w), gives, leaves));
        }
        Fixing fixing = small && random.nextInt(5) == 0 ? Fixing.LOOSE_BETWEEN_GAMES : Fixing.GLUED;
        parts.add(new Part(part, "", fixing, builds, List.of(), List.of()));
    }

    private void box(int number) {
        Map<Id, Integer> inside = new TreeMap<>();
        int kinds = 1 + random.nextInt(small ? 3 : 4);
        for (int k = 0; k < kinds; k++) {
            boolean part = !parts.isEmpty() && random.nextInt(3) == 0;
            Id what = part ? parts.get(random.nextInt(parts.size())).id() : type();
            inside.merge(what, 1 + random.nextInt(small ? 4 : 6), Integer::sum);
        }
        List<Content> contents = inside.entrySet().stream().map(one -> some(one.getValue(), one.getKey())).toList();
        int size = inside.values().stream().mapToInt(Integer::intValue).sum();
        int cents = (size * (150 + random.nextInt(150)) + 200) / 50 * 50;
        List<Cap> caps = new ArrayList<>();
        if (small && random.nextInt(4) == 0) {
            caps.add(new Cap(id("Cap-" + number), 1 + random.nextInt(2), List.of(type(), type())));
        }
        List<Price> prices = small && random.nextInt(8) == 0 ? List.of() : List.of(price(number, cents));
        List<Stock> stock = random.nextInt(3) == 0 && (small || random.nextBoolean())
                ? List.of(new Stock(id("B" + number).line(2), 1 + random.nextInt(4), Optional.empty())) : List.of();
        boxes.add(new Box(id("B" + number), "", false, contents, caps, prices, List.of(), stock, List.of(), List.of(),
                List.of(), List.of()));
    }

    private Price price(int number, int cents) {
        return new Price(id("B" + number).line(1), Money.ofMinor(CurrencyUnit.EUR, cents), Validity.ALWAYS);
    }

    private void sell() {
        for (int s = 0; s < random.nextInt(3); s++) {
            Id seller = id("Seller-" + s);
            List<Offer> offers = new ArrayList<>();
            for (Box box : boxes) {
                if (random.nextBoolean()) {
                    Money money = Money.ofMinor(CurrencyUnit.EUR, 200 + random.nextInt(1500));
                    offers.add(new Offer(seller.line(10 + offers.size()),
                            random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(3)) : OptionalInt.empty(), box.id(),
                            money, true, Validity.ALWAYS));
                }
            }
            Optional<Money> free = random.nextBoolean()
                    ? Optional.of(Money.ofMinor(CurrencyUnit.EUR, 1000 + random.nextInt(5000))) : Optional.empty();
            List<Postage> postage = random.nextInt(3) == 0 ? List.of() : List.of(
                    new Postage(seller.line(1), Money.ofMinor(CurrencyUnit.EUR, 100 + random.nextInt(700)), free));
            List<Discount> discounts = random.nextInt(3) > 0 ? List.of() : List.of(new Discount(seller.line(2),
                    5 + random.nextInt(20), random.nextBoolean() ? Optional.empty()
                            : Optional.of(Money.ofMinor(CurrencyUnit.EUR, 1500 + random.nextInt(3000))), Validity.ALWAYS));
            sellers.add(new Seller(seller, "", Optional.of(CurrencyUnit.EUR), postage, discounts, OptionalInt.empty(),
                    offers, List.of(), List.of()));
        }
    }

    private void likeness() {
        for (int i = 0; i < random.nextInt(3); i++) {
            OptionalInt share = random.nextInt(3) == 0 ? OptionalInt.of(10 + random.nextInt(60)) : OptionalInt.empty();
            facts.add(new Stands(id("Card").line(10 + i), List.of(type()), List.of(type()), share, false, Validity.ALWAYS));
        }
        for (int i = 0; i < random.nextInt(3); i++) {
            List<Content> from = new ArrayList<>();
            int kind = random.nextInt(4);
            if (kind > 0) {
                from.add(some(1 + random.nextInt(2), type()));
            }
            if (kind < 2) {
                from.add(some(1 + random.nextInt(2), BITS));
            }
            facts.add(new Turns(id("Card").line(20 + i), from, some(1, type()),
                    random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(3)) : OptionalInt.empty(), Validity.ALWAYS));
        }
        if (random.nextInt(5) == 0) {
            facts.add(new OneTable(id("Card").line(30), Validity.ALWAYS));
        }
    }

    private void own() {
        Id shelf = Id.of("Shelf");
        for (int i = 0; i < (small ? random.nextInt(4) : pieces.size() / 5); i++) {
            boolean part = !parts.isEmpty() && random.nextInt(3) == 0;
            Id what = part ? parts.get(random.nextInt(parts.size())).id() : small && random.nextInt(8) == 0 ? BITS : type();
            holdings.add(new Holding(shelf.line(i + 1), Certainty.KNOWN, 1 + random.nextInt(3), what, List.of(),
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(),
                    List.of()));
        }
    }

    private List<Requirement> list(int number) {
        List<Requirement> needs = new ArrayList<>();
        int count = small ? 1 + random.nextInt(4) : 12 + random.nextInt(12);
        for (int i = 0; i < count; i++) {
            needs.add(new Requirement(Id.of("List-" + number).line(i + 1), 1 + random.nextInt(small ? 4 : 8),
                    small ? wanted() : ofArmy()));
        }
        return needs;
    }

    private List<Id> wanted() {
        return List.of(random.nextInt(10) < 7 ? type() : families.get(random.nextInt(families.size())).id());
    }

    /** Lists of one player are much alike; what they need is sold. */
    private List<Id> ofArmy() {
        while (army.size() < 40) {
            Box box = boxes.get(random.nextInt(boxes.size()));
            Id what = box.contents().get(random.nextInt(box.contents().size())).what();
            Id type = parts.stream().filter(part -> part.id().equals(what)).findFirst()
                    .map(part -> part.builds().get(random.nextInt(part.builds().size())).gives().get(0).what()).orElse(what);
            army.add(type);
        }
        Id type = random.nextInt(5) > 0 ? army.get(random.nextInt(army.size())) : army.get(random.nextInt(10));
        int how = random.nextInt(10);
        Optional<Id> family = pieces.stream().filter(piece -> piece.id().equals(type)).findFirst().flatMap(Piece::family);
        return how < 7 ? List.of(type) : how < 9 ? List.of(family.orElse(type))
                : List.of(type, army.get(random.nextInt(army.size())));
    }
}
