package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.id;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Turns;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/**
 * The bill of materials of problem 14.3 in Heizer and Render, Operations Management, gross and net. A bracket is a base, 2
 * springs and 4 clamps; a base a clamp and 2 housings; a clamp a handle and a casting; a housing 2 bearings and a shaft. What
 * is put together is a conversion here, and what was converted is not converted again; so it takes two questions, the second
 * about what the first had to buy.
 */
class MaterialsTest {

    private static final Id CARD = Id.of("Book/Card");
    private static final List<String> ALL = List.of("Base", "Spring", "Clamp", "Housing", "Handle", "Casting", "Bearing",
            "Shaft");

    private static Fact turns(int line, String from, String to) {
        return new Turns(CARD.line(line), Shop.contents(from), Shop.contents("1 " + to).get(0), OptionalInt.empty(),
                Validity.ALWAYS);
    }

    /** What is bought of each thing where only these are sold, one by one. */
    private static Map<String, Integer> bought(List<String> sold, Supply shelf, String needs, Fact... facts) {
        Shop shop = new Shop().pieces(ALL.toArray(String[]::new));
        sold.forEach(one -> shop.box("Box-" + one, "1 " + one, "1.00"));
        Target target = Target.now(id("Order"), "Order", Shop.needs(needs), shop.allowance(facts));
        Plan plan = Shop.ask(Question.of(shop.market(), shelf, List.of(target))).plan().orElseThrow();
        Map<String, Integer> bought = new TreeMap<>();
        plan.purchases().forEach(one -> bought.put(one.ware().box().name().substring(4), one.count()));
        return bought;
    }

    private static Map<String, Integer> exploded(Supply shelf) {
        Map<String, Integer> upper = bought(List.of("Spring", "Clamp", "Housing"), shelf, "50 Base, 100 Spring, 200 Clamp",
                turns(1, "1 Clamp, 2 Housing", "Base"));
        List<String> needs = new ArrayList<>();
        upper.forEach((name, count) -> needs.add(count + " " + name));
        Map<String, Integer> lower = bought(List.of("Spring", "Handle", "Casting", "Bearing", "Shaft"), Supply.NONE,
                needs.stream().collect(Collectors.joining(", ")), turns(1, "1 Handle, 1 Casting", "Clamp"),
                turns(2, "2 Bearing, 1 Shaft", "Housing"));
        lower.putAll(upper);
        return lower;
    }

    @Test
    void grossForFiftyBrackets() {
        assertEquals(Map.of("Spring", 100, "Clamp", 250, "Housing", 100, "Handle", 250, "Casting", 250, "Bearing", 200,
                "Shaft", 100), exploded(Supply.NONE));
    }

    @Test
    void netOfTwentyFiveBasesAndAHundredClampsInHand() {
        assertEquals(Map.of("Spring", 100, "Clamp", 125, "Housing", 50, "Handle", 125, "Casting", 125, "Bearing", 100,
                "Shaft", 50), exploded(Shop.shelf("25 Base, 100 Clamp")));
    }
}
