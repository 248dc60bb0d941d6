package org.cantonment.desk.tests.outside.expressions;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Writes expressions at random, twice each: in the notation, and in the other language with the precedence that this has
 * of its own accord. Quotients are always rounded, since the other language reckons in decimals.
 */
final class Writer {

    private static final int DEEPEST = 5;
    private static final String[] WHO = { "Armour", "Eyes", "Tread", "Bike", "Mule", "units" };
    private static final String[][] COMPARES = { { "is", "==" }, { "is not", "!=" }, { "is at least", ">=" },
            { "is at most", "<=" }, { "is more than", ">" }, { "is less than", "<" } };

    /** A name given by a let line. */
    record Name(String ours, String theirs, boolean number, int depth) {
    }

    private final Random random;
    private final List<Name> names = new ArrayList<>();
    private int depth;

    Writer(Random random) {
        this.random = random;
    }

    /** The names given so far. */
    List<Name> names() {
        return names;
    }

    /** A let line with a number or a yes or no behind it, and the other language's line for the same. */
    Pair let() {
        boolean number = random.nextInt(5) < 3;
        depth = 0;
        Pair said = number ? number() : truth();
        Name name = new Name("Name-" + names.size(), "name" + names.size(), number, depth + 1);
        names.add(name);
        return new Pair("  . let " + name.ours() + " be " + said.ours(), "var " + name.theirs() + " = " + said.theirs() + ";");
    }

    private Pair number() {
        if (random.nextInt(8) == 0) {
            return gathered();
        }
        Pair sum = sum();
        int keep = random.nextInt(6);
        if (keep > 1) {
            return sum;
        }
        Pair other = sum();
        return new Pair(sum.ours() + (keep == 0 ? " but at most " : " but at least ") + other.ours(),
                (keep == 0 ? "my:least(" : "my:greatest(") + sum.theirs() + ", " + other.theirs() + ")");
    }

    private Pair sum() {
        Pair sum = term();
        for (int i = random.nextInt(3); i > 0; i--) {
            boolean plus = random.nextBoolean();
            sum = sum.with(plus ? "plus" : "minus", plus ? "+" : "-", term());
        }
        return sum;
    }

    private Pair term() {
        Pair term = atom();
        for (int i = random.nextInt(3); i > 0; i--) {
            int how = random.nextInt(4);
            if (how == 0) {
                boolean up = random.nextBoolean();
                Pair by = divisor();
                term = new Pair(term.ours() + " divided by " + by.ours() + (up ? " rounded up" : " rounded down"),
                        (up ? "my:up(" : "my:down(") + term.theirs() + ", " + by.theirs() + ")");
            } else if (how == 1) {
                Pair of = atom();
                term = new Pair(term.ours() + " percent of " + of.ours(), term.theirs() + " * " + of.theirs() + " * 0.01B");
            } else {
                term = term.with("times", "*", atom());
            }
        }
        return term;
    }

    private Pair divisor() {
        String number = Integer.toString(1 + random.nextInt(12));
        return new Pair(number, number + "B");
    }

    private Pair atom() {
        int kind = random.nextInt(10);
        if (kind < 3) {
            return figure();
        }
        Name name = kind < 5 ? some(true) : null;
        return name == null ? measure() : use(name);
    }

    private Pair figure() {
        String text = random.nextInt(4) == 0 ? random.nextInt(30) + "." + random.nextInt(10) + (1 + random.nextInt(9))
                : Integer.toString(random.nextInt(20));
        return new Pair(text, text + "B");
    }

    private Name some(boolean number) {
        List<Name> fit = names.stream().filter(name -> name.number() == number && name.depth() < DEEPEST).toList();
        return fit.isEmpty() ? null : fit.get(random.nextInt(fit.size()));
    }

    private Pair use(Name name) {
        depth = Math.max(depth, name.depth());
        return new Pair(name.ours(), name.theirs());
    }

    private Pair measure() {
        String who = WHO[random.nextInt(WHO.length)];
        String[] measures = { "count of", "strength of", "points of", "count of different", "options on" };
        int which = random.nextInt(measures.length);
        String[] theirs = { "count", "strength", "points", "different", "options" };
        return new Pair(measures[which] + ' ' + who, "my:" + theirs[which] + "(all, '" + who + "')");
    }

    /** Something over the formations, whose entries are counted by themselves. */
    private Pair gathered() {
        String[] acts = { "sum", "greatest", "least" };
        String act = acts[random.nextInt(acts.length)];
        Pair inner = inner();
        return new Pair(act + " per Squad of " + inner.ours(), "my:" + act + "(squads, (squad) -> { " + inner.theirs() + " })");
    }

    private Pair inner() {
        String who = WHO[random.nextInt(WHO.length)];
        Pair figure = figure();
        boolean count = random.nextBoolean();
        return new Pair((count ? "count of " : "points of ") + who + " times " + figure.ours(),
                "my:" + (count ? "count" : "points") + "(squad, '" + who + "') * " + figure.theirs());
    }

    private Pair truth() {
        boolean all = random.nextBoolean();
        Pair truth = clause();
        for (int i = random.nextInt(3); i > 0; i--) {
            truth = truth.with(all ? "and" : "or", all ? "&&" : "||", clause());
        }
        return random.nextInt(6) == 0 ? quantified() : truth;
    }

    private Pair clause() {
        Name name = random.nextInt(4) == 0 ? some(false) : null;
        if (name != null) {
            Pair use = use(name);
            return random.nextBoolean() ? use : new Pair("not " + use.ours(), "!" + use.theirs());
        }
        Pair compared = compared(sum(), sum());
        return random.nextInt(4) == 0 ? new Pair("not " + compared.ours(), "!" + compared.theirs()) : compared;
    }

    private Pair compared(Pair left, Pair right) {
        String[] how = COMPARES[random.nextInt(COMPARES.length)];
        return new Pair(left.ours() + ' ' + how[0] + ' ' + right.ours(),
                "(" + left.theirs() + ' ' + how[1] + ' ' + right.theirs() + ")");
    }

    private Pair quantified() {
        boolean each = random.nextBoolean();
        Pair body = compared(inner(), figure());
        return new Pair((each ? "each" : "any") + " Squad has " + body.ours(),
                "my:" + (each ? "each" : "any") + "(squads, (squad) -> { " + body.theirs() + " })");
    }
}
