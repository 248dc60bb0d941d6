package org.cantonment.desk.tests.outside.expressions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

import org.apache.commons.jexl3.JexlBuilder;
import org.apache.commons.jexl3.JexlContext;
import org.apache.commons.jexl3.JexlEngine;
import org.apache.commons.jexl3.JexlException;
import org.apache.commons.jexl3.MapContext;
import org.apache.commons.jexl3.introspection.JexlPermissions;
import org.cantonment.desk.tests.outside.expressions.Reckoner.Some;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.cantonment.notation.Notation;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.expression.Amount;
import org.cantonment.rules.expression.Evaluator;
import org.cantonment.rules.expression.Field;
import org.cantonment.rules.expression.Gap;
import org.cantonment.rules.expression.Value;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.MusterField;
import org.cantonment.rules.view.AlwaysView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.Ruling;
import org.junit.jupiter.api.Test;

/**
 * Thousands of expressions over lists, written at random in the notation and in JEXL, come to the same: Apache Commons
 * JEXL 3.5 (Apache licence 2.0) reads and reckons its side, with decimals of 400 digits. The few that go beyond what the
 * rules reckon with are counted, and passed over.
 */
class ExpressionsTest {

    private static final long SEED = 20310415L;
    private static final int BOOKS = 120;
    private static final int LINES = 40;
    private static final JexlEngine JEXL = new JexlBuilder().strict(true).silent(false).permissions(JexlPermissions.UNRESTRICTED)
            .arithmetic(new org.apache.commons.jexl3.JexlArithmetic(true, new MathContext(400), 400))
            .namespaces(Map.of("my", new Reckoner())).create();
    private static final String RULES = """
            rules Pond
            kind Armour
            kind Eyes
            unit Tread
              . is Armour
              . strength 1 to 6 for 8 points each
              . option Guns, at most 3, for 2 points each
            unit Bike
              . is Eyes
              . strength 1 to 6 for 3 points
            unit Mule
              . strength 1 to 6 for 1 point each
              . option Guns, at most 3, for 5 points each
            formation Squad
              . billet Line 0 to 99 of Tread, Bike, Mule
            limit All
            """;

    @Test
    void thousandsOfExpressionsComeToTheSameInAnotherLanguage() {
        int compared = 0;
        int numbers = 0;
        int so = 0;
        int beyond = 0;
        for (int book = 0; book < BOOKS; book++) {
            Random random = new Random(SEED + book);
            List<Some> some = some(random);
            Writer writer = new Writer(random);
            List<Pair> lines = new ArrayList<>();
            for (int line = 0; line < LINES; line++) {
                lines.add(writer.let());
            }
            Map<String, Value> ours = ours(lines, writer, some);
            Map<String, Object> theirs = theirs(lines, writer, some);
            for (Writer.Name name : writer.names()) {
                String where = "book " + book + ", " + name.ours() + ": " + lines.get(writer.names().indexOf(name));
                Value our = ours.get(name.ours());
                Object their = theirs.get(name.ours());
                if (our == Gap.BEYOND) {
                    beyond++;
                } else if (name.number()) {
                    assertTrue(our instanceof Amount, where + " came to " + our);
                    var ratio = ((Amount) our).ratio();
                    // Exact on both sides: held against each other without dividing.
                    BigDecimal left = BigDecimal.valueOf(ratio.number());
                    BigDecimal right = ((BigDecimal) their).multiply(BigDecimal.valueOf(ratio.divisor()));
                    assertEquals(0, left.compareTo(right), where + " is " + ratio + " and not " + their);
                    numbers++;
                } else {
                    assertEquals((Boolean) their ? "yes" : "no", our.words(), where);
                    so += (Boolean) their ? 1 : 0;
                }
                compared++;
            }
        }
        assertTrue(beyond * 50 < compared, beyond + " of " + compared + " are beyond what is reckoned");
        assertTrue(compared == BOOKS * LINES && numbers > compared / 3 && so > compared / 10 && so < compared - numbers - 99,
                compared + " compared, " + numbers + " numbers, " + so + " times yes");
    }

    private static List<Some> some(Random random) {
        List<Some> all = new ArrayList<>();
        String[][] units = { { "Tread", "Armour" }, { "Bike", "Eyes" }, { "Mule", "None" } };
        for (int squad = 0; squad < 1 + random.nextInt(3); squad++) {
            for (int line = random.nextInt(4); line >= 0; line--) {
                String[] unit = units[random.nextInt(3)];
                int strength = 1 + random.nextInt(6);
                int options = unit[0].equals("Bike") ? 0 : random.nextInt(4);
                int each = unit[0].equals("Tread") ? 8 * strength + 2 * options
                        : unit[0].equals("Bike") ? 3 : strength + 5 * options;
                all.add(new Some(unit[0], unit[1], 1 + random.nextInt(3), strength, each, options, squad));
            }
        }
        return all;
    }

    private static Map<String, Value> ours(List<Pair> lines, Writer writer, List<Some> some) {
        StringBuilder rules = new StringBuilder(RULES);
        lines.forEach(line -> rules.append(line.ours()).append('\n'));
        writer.names().forEach(name -> rules.append("  . always ").append(name.ours())
                .append(name.number() ? " is 0\n" : " is yes\n"));
        Library library = Notation.get().newLibrary();
        Document book = library.put(Path.of("/desk/pond.rules"), rules.toString());
        Document list = library.put(Path.of("/desk/a.list"), list(some));
        library.linkAnew();
        assertEquals(List.of(), book.findings(), () -> book.findings() + "\n" + rules);
        assertEquals(List.of(), list.findings());
        Ruling ruling = RulingCompiler.compile(List.of(book.meaning(RuleSet.class).orElseThrow()), Occasion.UNKNOWN);
        assertEquals(List.of(), ruling.findings());
        ForceList force = list.meaning(ForceList.class).orElseThrow();
        Evaluator evaluator = new Evaluator(new MusterField(Muster.of(ruling, force.id(), force.body()), CancelToken.NEVER));
        Map<String, Value> values = new TreeMap<>();
        List<LimitLine> all = ruling.limits().get(0).lines();
        assertEquals(lines.size(), all.size());
        for (int i = 0; i < all.size(); i++) {
            var named = ((AlwaysView) all.get(i)).formula().part();
            values.put(writer.names().get(i).ours(), evaluator.value(named, Field.ALL, Field.ALL));
        }
        return values;
    }

    private static String list(List<Some> some) {
        StringBuilder list = new StringBuilder("list Dream under Pond\n");
        int squad = -1;
        for (Some each : some) {
            if (each.squad() != squad) {
                list.append("Squad\n");
                squad = each.squad();
            }
            list.append("  . ").append(each.count()).append(' ').append(each.unit()).append(" of ").append(each.strength());
            list.append(each.options() == 0 ? "" : ", " + each.options() + " Guns").append('\n');
        }
        return list.toString();
    }

    private static Map<String, Object> theirs(List<Pair> lines, Writer writer, List<Some> some) {
        TreeMap<Integer, List<Some>> squads = new TreeMap<>();
        some.forEach(each -> squads.computeIfAbsent(each.squad(), any -> new ArrayList<>()).add(each));
        JexlContext context = new MapContext();
        context.set("all", some);
        context.set("squads", new ArrayList<>(squads.values()));
        StringBuilder script = new StringBuilder();
        lines.forEach(line -> script.append(line.theirs()).append('\n'));
        script.append("[");
        writer.names().forEach(name -> script.append(name.theirs()).append(", "));
        script.append("...]");
        try {
            List<?> results = (List<?>) JEXL.createScript(script.toString()).execute(context);
            Map<String, Object> values = new TreeMap<>();
            for (int i = 0; i < results.size(); i++) {
                values.put(writer.names().get(i).ours(), results.get(i));
            }
            return values;
        } catch (JexlException wrong) {
            throw new AssertionError("JEXL could not reckon\n" + script, wrong);
        }
    }
}
