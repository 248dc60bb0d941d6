package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.cantonment.buying.plan.Bench;
import org.cantonment.buying.plan.Building;
import org.cantonment.buying.plan.Conversions;
import org.cantonment.buying.plan.Leftover;
import org.cantonment.buying.plan.Order;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.buying.plan.Work;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.shelf.BenchTime;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.turnout.Turnout;

/** The parts of a plan in words. */
public final class PlanText {
    private static final int MOST_UNTIMED = 4;

    private final Catalogue catalogue;
    private final List<String> people;

    /** @param catalogue for what people call things */
    public PlanText(Catalogue catalogue) {
        this(catalogue, List.of());
    }

    /** @param people who orders together, by their places in the question; nobody is named where there is only one */
    PlanText(Catalogue catalogue, List<String> people) {
        this.catalogue = catalogue;
        this.people = List.copyOf(people);
    }

    /** What is bought in a stage, each order with its boxes; indented by two blanks. */
    public List<String> orders(Plan plan, int stage) {
        List<String> lines = new ArrayList<>();
        for (Order order : plan.orders()) {
            if (order.stage() == stage) {
                lines.add("  " + order(order));
                plan.purchases().stream().filter(one -> one.stage() == stage && one.ware().seller().equals(order.seller()))
                        .forEach(one -> lines.add("    " + purchase(one)));
            }
        }
        return lines;
    }

    /** "From Oddbarrow Works: 22.00 EUR", with what sending costs and what is taken off. */
    public String order(Order order) {
        String more = order.sending().isZero() && order.off().isZero() ? "" : " (goods " + Amounts.text(order.goods())
                + (order.sending().isZero() ? "" : ", postage " + Amounts.text(order.sending()))
                + (order.off().isZero() ? "" : ", discount " + Amounts.text(order.off())) + ")";
        return "From " + order.title() + ": " + Cash.text(order.total()) + more;
    }

    /** "2 Marsh box (MB-1), 20.00 EUR". */
    public String purchase(Purchase purchase) {
        String code = purchase.ware().code();
        return boxes(purchase) + (code.equals(purchase.ware().title()) ? "" : " (" + code + ")") + ", "
                + Cash.text(purchase.sum());
    }

    /** "2 Marsh box". */
    public String boxes(Purchase purchase) {
        String name = purchase.ware().boxes() == 1 ? purchase.ware().title()
                : "times " + purchase.ware().boxes() + " " + purchase.ware().title();
        return purchase.count() + " " + name;
    }

    /** "1 Marsh box and 2 Car box", or "nothing". */
    public String boxes(List<Purchase> purchases) {
        return and(purchases.stream().map(this::boxes).toList());
    }

    /** "nothing"; "one"; "one and another"; "one, another and a third". */
    static String and(List<String> words) {
        int last = words.size() - 1;
        return last < 0 ? "nothing" : last == 0 ? words.get(0)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** What is built in a stage, a sentence without its full stop each. */
    public List<String> builds(Plan plan, int stage) {
        List<String> words = new ArrayList<>();
        plan.buildings().stream().filter(one -> one.stage() == stage && one.newly() > 0 && !one.build().equals(one.part()))
                .forEach(one -> words.add(build(one) + whose(one.person())));
        plan.buildings().stream().filter(one -> one.stage() == stage && one.build().equals(one.part()) && people.size() > 1)
                .forEach(one -> words.add(one.count() + " " + catalogue.title(one.part()) + whose(one.person())));
        plan.conversions().stream().filter(one -> one.stage() == stage).forEach(one -> words.add(worked(one) + whose(one.person())));
        return words;
    }

    /** What is built in all stages together, a sentence without its full stop each. */
    List<String> builds(Plan plan) {
        Map<List<Object>, Building> all = new LinkedHashMap<>();
        plan.buildings().stream().filter(one -> one.newly() > 0 && !one.build().equals(one.part()))
                .forEach(one -> all.merge(List.of(one.part(), one.build(), one.person()), one, Building::plus));
        List<String> words = new ArrayList<>();
        all.values().forEach(one -> words.add(build(one) + whose(one.person())));
        plan.conversions().forEach(one -> words.add(worked(one) + whose(one.person())));
        return words;
    }

    /** What is built for one list alone and taken apart after it, a sentence without its full stop; empty if nothing is. */
    public List<String> alone(Plan plan, int list) {
        List<Building> builds = plan.alone().get(list);
        return builds.isEmpty() ? List.of() : List.of("For this game alone: " + and(builds.stream().map(this::build).toList()));
    }

    private String whose(int person) {
        return people.size() < 2 ? "" : ", for " + people.get(person);
    }

    /** "3 hours 20 minutes at the bench", of so much if there is an end of it, or "2 of 4 parts built"; empty if nothing is known. */
    static String work(Work work, Optional<Bench> most) {
        if (most.isPresent()) {
            Bench bench = most.get();
            return bench.measure() == Measure.PARTS ? work.parts() + " of " + bench.words(bench.most()) + " built"
                    : bench.words(work.minutes()) + " of " + bench.words(bench.most()) + " at the bench";
        }
        return work.minutes() == 0 ? "" : BenchTime.words(work.minutes(), Measure.MINUTES) + " at the bench";
    }

    /** "At the bench: 3 hours 20 minutes.", for all that is built; empty if no time is known of it. */
    static String bench(Plan plan) {
        long minutes = plan.allWork().minutes();
        return minutes == 0 ? "" : "At the bench: " + BenchTime.words(minutes, Measure.MINUTES) + ".";
    }

    /** Which of the parts that are built do not say how long they take, as a sentence; empty where nobody asks for time. */
    String untimed(Plan plan, boolean asked) {
        List<String> parts = plan.allWork().untimed().keySet().stream().map(catalogue::title).toList();
        if (parts.isEmpty() || !asked && plan.allWork().minutes() == 0) {
            return "";
        }
        String which = parts.size() <= MOST_UNTIMED ? and(parts) : and(List.of(String.join(", ", parts.subList(0, MOST_UNTIMED)),
                (parts.size() - MOST_UNTIMED) + " other parts"));
        return "No range says how long it takes to build " + which + "; that counts as no time.";
    }

    /** What is built of what is bought, a sentence without its full stop each. */
    List<String> builtOfBought(Plan plan) {
        Set<Id> parts = plan.purchases().stream().flatMap(one -> one.ware().load().frames().stream()).map(Frames::part)
                .collect(Collectors.toSet());
        return Stream.concat(plan.buildings().stream(), plan.alone().stream().flatMap(List::stream))
                .filter(one -> parts.contains(one.part()) && one.newly() > 0 && !one.build().equals(one.part())).map(this::build)
                .distinct().toList();
    }

    /** "1 Car frame as Crank car, glued". */
    private String build(Building building) {
        String as = catalogue.part(building.part()).map(Part::builds).orElse(List.of()).stream()
                .filter(one -> one.id().equals(building.build())).findFirst().map(this::gives)
                .orElseGet(() -> things(building.gives()));
        return building.newly() + " " + catalogue.title(building.part()) + (building.newly() == 1 ? " as " : ", each as ")
                + as + (building.fixing() == Fixing.GLUED ? ", glued" : "");
    }

    private String gives(Build build) {
        return and(build.gives().stream().map(this::content).toList());
    }

    private String content(Content content) {
        return content.count() + " " + catalogue.title(content.what());
    }

    private String worked(Conversions one) {
        return things(one.conversion().from()) + " worked over into " + one.conversion().gives() + " "
                + catalogue.title(one.conversion().to()) + (one.times() == 1 ? "" : ", " + one.times() + " times");
    }

    private String things(Map<Id, Integer> counts) {
        return and(counts.entrySet().stream().map(one -> one.getValue() + " " + catalogue.title(one.getKey())).toList());
    }

    /** "4 Marsh foot, 1 Car frame", or "nothing". */
    public String leftovers(Plan plan) {
        return plan.leftovers().isEmpty() ? "nothing" : plan.leftovers().stream().map(this::leftover)
                .collect(Collectors.joining(", "));
    }

    private String leftover(Leftover left) {
        return left.count() + " " + catalogue.title(left.what()) + (catalogue.part(left.what()).isPresent() ? " (unbuilt)" : "");
    }

    /** "11 pieces stand: 9 exact, 2 kindred". */
    public String turnout(Turnout turnout) {
        List<String> truths = new ArrayList<>();
        for (Truth truth : Truth.values()) {
            int count = turnout.standing(truth);
            if (count > 0) {
                truths.add(count + " " + word(truth));
            }
        }
        String how = truths.size() == 1 && turnout.standing(Truth.EXACT) > 0 ? ", exact" : truths.isEmpty() ? ""
                : ": " + String.join(", ", truths);
        String guesses = turnout.guesses().isEmpty() ? "" : "; it counts on guesses: " + turnout.guesses().stream()
                .map(one -> one.pieces() + " " + catalogue.title(one.what())).collect(Collectors.joining(", "));
        return "all " + turnout.needed() + " pieces stand" + how + guesses;
    }

    /** What people call a truth. */
    public static String word(Truth truth) {
        return switch (truth) {
            case EXACT -> "exact";
            case KINDRED -> "kindred";
            case STAND_IN -> "stand-in";
            case CONVERSION -> "converted";
        };
    }

    /** How sure a plan's cost is, as a sentence. */
    public static String proof(Plan plan) {
        if (!plan.proven()) {
            return "The best that was found; nothing costs less than " + Cash.text(plan.bound()) + ", so at most "
                    + Cash.text(plan.gap()) + " could be saved.";
        }
        return plan.settled() ? "Proven: nothing costs less."
                : "Proven: nothing costs less. Whether another plan for the same money leaves less over was not settled.";
    }
}
