package org.cantonment.buying.tests;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.MarketMaker;
import org.cantonment.buying.market.Rates;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.campaign.Rate;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Bits;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Discount;
import org.cantonment.domain.range.Extra;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Lot;
import org.cantonment.domain.range.Offer;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Postage;
import org.cantonment.domain.range.Price;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Seller;
import org.cantonment.domain.range.Stock;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Puts together a small range with prices, its sellers, and questions about it. */
final class Shop {

    static final CurrencyUnit EUR = CurrencyUnit.EUR;
    static final LocalDate DAY = LocalDate.of(2031, 3, 1);

    private final List<Family> families = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Bits> bits = new ArrayList<>();
    private final List<Extra> extras = new ArrayList<>();
    private final List<Box> boxes = new ArrayList<>();
    private final List<Seller> sellers = new ArrayList<>();
    private final List<Rate> rates = new ArrayList<>();

    static Id id(String name) {
        return Id.of("Works", name);
    }

    static Money eur(String amount) {
        return Money.parse("EUR " + amount);
    }

    Shop family(String name, String... members) {
        families.add(new Family(id(name), "", Optional.empty(), List.of()));
        for (String member : members) {
            pieces.add(new Piece(id(member), "", Optional.of(id(name)), List.of()));
        }
        return this;
    }

    Shop pieces(String... names) {
        for (String name : names) {
            pieces.add(new Piece(id(name), "", Optional.empty(), List.of()));
        }
        return this;
    }

    Shop extra(String name) {
        extras.add(new Extra(id(name), "", Optional.empty(), List.of()));
        return this;
    }

    static List<Content> contents(String text) {
        return text.isEmpty() ? List.of() : Arrays.stream(text.split(", ")).map(one -> {
            String[] words = one.split(" ");
            return new Content(Certainty.KNOWN, Integer.parseInt(words[0]), id(words[1]));
        }).toList();
    }

    Shop bits(String name) {
        bits.add(new Bits(id(name), "", List.of()));
        return this;
    }

    /** Each way as "3 Foot, 1 Bell", or "2 Spotter leaves 2 Wheels". */
    Shop part(String name, Fixing fixing, String... ways) {
        List<Build> builds = new ArrayList<>();
        for (String way : ways) {
            String[] halves = way.split(" leaves ");
            builds.add(new Build(id(name).line(builds.size() + 1), contents(halves[0]),
                    halves.length == 1 ? List.of() : contents(halves[1])));
        }
        parts.add(new Part(id(name), "", fixing, builds, List.of(), List.of()));
        return this;
    }

    Shop part(String name, String... ways) {
        return part(name, Fixing.GLUED, ways);
    }

    Shop box(String name, String contents, String price) {
        return box(name, contents, price, -1, List.of(), false);
    }

    Shop bundle(String name, String contents, String price) {
        return box(name, contents, price, -1, List.of(), true);
    }

    Shop box(String name, String contents, String price, int stock, List<Cap> caps, boolean bundle) {
        List<Price> prices = price.isEmpty() ? List.of()
                : List.of(new Price(id(name).line(1), eur(price), Validity.ALWAYS));
        List<Stock> stocks = stock < 0 ? List.of() : List.of(new Stock(id(name).line(2), stock, Optional.empty()));
        boxes.add(new Box(id(name), "", bundle, contents(contents), caps, prices, List.of(), stocks, List.of(), List.of(),
                List.of(), List.of()));
        return this;
    }

    static Cap cap(int most, String... of) {
        return new Cap(id("Cap").child(most + String.join("-", of)), most, Arrays.stream(of).map(Shop::id).toList());
    }

    /** Terms as texts: postage and the goods from which it is free, "10 from 100.00" for a discount, days; may be empty. */
    Shop seller(String name, String postage, String freeFrom, String discount, int days, Offer... offers) {
        List<Postage> sending = postage.isEmpty() ? List.of() : List.of(new Postage(id(name).line(1), eur(postage),
                freeFrom.isEmpty() ? Optional.empty() : Optional.of(eur(freeFrom))));
        List<Discount> discounts = new ArrayList<>();
        for (String one : discount.isEmpty() ? new String[0] : discount.split(", ")) {
            String[] words = one.split(" from ");
            discounts.add(new Discount(id(name).line(20 + discounts.size()), Integer.parseInt(words[0]),
                    words.length > 1 ? Optional.of(eur(words[1])) : Optional.empty(), Validity.ALWAYS));
        }
        sellers.add(new Seller(id(name), "", Optional.of(EUR), sending, discounts,
                days < 0 ? OptionalInt.empty() : OptionalInt.of(days), List.of(offers), List.of(), List.of()));
        return this;
    }

    static Offer offer(String line, int count, String box, Money price) {
        return new Offer(id(line), count < 0 ? OptionalInt.empty() : OptionalInt.of(count), id(box), price, true,
                Validity.ALWAYS);
    }

    Shop lot(String seller, String name, String contents, String price) {
        sellers.add(new Seller(id(seller), "", Optional.of(EUR), List.of(), List.of(), OptionalInt.empty(), List.of(),
                List.of(new Lot(id(name), "", eur(price), Validity.ALWAYS, contents(contents), List.of(), List.of())),
                List.of()));
        return this;
    }

    /** Some of what lies in the lot is only guessed. */
    Shop guessedLot(String seller, String name, String known, String guessed, String price) {
        List<Content> all = new ArrayList<>(contents(known));
        contents(guessed).forEach(one -> all.add(new Content(Certainty.GUESSED, one.count(), one.what())));
        sellers.add(new Seller(id(seller), "", Optional.of(EUR), List.of(), List.of(), OptionalInt.empty(), List.of(),
                List.of(new Lot(id(name), "", eur(price), Validity.ALWAYS, all, List.of(), List.of())), List.of()));
        return this;
    }

    Shop rate(String one, String other) {
        rates.add(new Rate(id("Rate").line(rates.size() + 1), Money.parse(one), Money.parse(other), Validity.ALWAYS));
        return this;
    }

    Range range() {
        return new Range(Id.of("Works"), "", Optional.of(EUR), families, pieces, parts, extras, bits, boxes, sellers,
                List.of());
    }

    Market market() {
        return MarketMaker.on(DAY, List.of(range()), List.of(), Rates.on(rates, DAY, EUR));
    }

    Allowance allowance(Fact... facts) {
        return Allowance.of(market().catalogue(), List.of(new Likeness(Id.of("Book/Card"), "", List.of(facts), List.of())),
                Optional.empty(), Terms.ANY);
    }

    /** Needs as "12 Marsh, 3 Car or Wagon". */
    static List<Requirement> needs(String text) {
        List<Requirement> needs = new ArrayList<>();
        for (String one : text.split(", ")) {
            String[] words = one.split(" ", 2);
            needs.add(new Requirement(Id.of("List").line(needs.size() + 1), Integer.parseInt(words[0]),
                    Arrays.stream(words[1].split(" or ")).map(Shop::id).toList()));
        }
        return needs;
    }

    static Target target(String name, int stage, String needs) {
        return new Target(Id.of(name), name, stage, needs(needs), Allowance.EXACT);
    }

    static Target target(String name, String needs) {
        return target(name, 0, needs);
    }

    static Supply shelf(String pieces) {
        Map<Id, Integer> counts = new java.util.TreeMap<>();
        contents(pieces).forEach(one -> counts.put(one.what(), one.count()));
        return Supply.pieces(counts);
    }

    Answer ask(Supply shelf, Target... targets) {
        return ask(Question.of(market(), shelf, List.of(targets)));
    }

    static Answer ask(Question question) {
        return Planner.plan(question, EUR, CancelToken.NEVER, Progress.SILENT);
    }

    Plan plan(Supply shelf, Target... targets) {
        return ask(shelf, targets).plan().orElseThrow();
    }

    /** "2 Car, 1 Marsh" for purchases. */
    static String text(Plan plan) {
        return String.join(", ", plan.purchases().stream()
                .map(one -> one.count() + " " + one.ware().box().name()).toList());
    }

    static String left(Plan plan) {
        return String.join(", ", plan.leftovers().stream().map(one -> one.count() + " " + one.what().name()).toList());
    }
}
