package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.market.Ware;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.plan.Work;
import org.cantonment.buying.solve.Preference;
import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Supply;

/** A question as a programme: how many of each ware in each stage, what is built of the parts, what is worked over. */
public final class Formulation {

    /** Wares that help nothing and that no threshold could ask for have no column. */
    static final int NONE = -1;
    /** What a piece costs that stands for another where what is bought is settled; a build costs 1. */
    private static final int FOR_OTHERS = 1_000;

    private final Question question;
    private final Shares shares;
    private final List<Ware> wares;
    private final List<Wants> wants = new ArrayList<>();
    private final Set<Id> needed = new TreeSet<>();
    private final Stores stores;
    private final ProgrammeMaker maker;
    private final Purchases purchases;
    private final Builds builds;
    private final Choices choices;
    private final Optional<Demands> demands;
    private final Map<Conversion, int[]> worked = new LinkedHashMap<>();
    private final Programme programme;

    /** Puts the programme together. */
    public Formulation(Question question) {
        this(question, CancelToken.NEVER);
    }

    /**
     * Puts the programme together.
     *
     * @throws Cancelled if the token says so
     */
    public Formulation(Question question, CancelToken cancel) {
        this(question, -1, OptionalLong.empty(), cancel);
    }

    /**
     * The programme that asks for as little money as can be beyond the budget of one stage.
     *
     * @param helped the stage; -1 for the usual programme
     * @param total what all stages together may cost at the most
     * @throws Cancelled if the token says so
     */
    public Formulation(Question question, int helped, OptionalLong total, CancelToken cancel) {
        this(question, Optional.empty(), Optional.empty(), helped, NONE, total, cancel);
    }

    /**
     * The programme that asks for as little time as can be at the bench of one stage, beyond what it has.
     *
     * @throws Cancelled if the token says so
     */
    public static Formulation atTheBench(Question question, int helped, CancelToken cancel) {
        return new Formulation(question, Optional.empty(), Optional.empty(), NONE, helped, OptionalLong.empty(), cancel);
    }

    /**
     * The programme that chooses what is to be fielded, too.
     *
     * @param question its one target needs as much as any choice could need
     * @throws Cancelled if the token says so
     */
    public Formulation(Question question, Sought sought, CancelToken cancel) {
        this(question, Optional.of(sought), Optional.empty(), NONE, NONE, OptionalLong.empty(), cancel);
    }

    /**
     * The programme where it is settled what is bought, and what costs is what stands for others, and then what is built.
     *
     * @param question its targets must all stand
     * @throws Cancelled if the token says so
     */
    public static Formulation settled(Question question, List<Purchase> bought, CancelToken cancel) {
        return new Formulation(question, Optional.empty(), Optional.of(bought), NONE, NONE, OptionalLong.empty(), cancel);
    }

    private Formulation(Question question, Optional<Sought> sought, Optional<List<Purchase>> bought, int helped,
            int busy, OptionalLong total, CancelToken cancel) {
        this.question = question;
        maker = sought.map(Sought::begun).map(ProgrammeMaker::new).orElseGet(ProgrammeMaker::new);
        shares = new Shares(question.shelves().size());
        wares = Copies.of(question.market().wares());
        List<Ware> shared = shares.wares(wares);
        for (Target target : question.targets()) {
            cancel.check();
            Wants one = new Wants(question.market().catalogue(), target, shares);
            wants.add(one);
            needed.addAll(one.types());
        }
        BuildTimes times = new BuildTimes(question.market().catalogue(), shares);
        stores = new Stores(needed, taken(), shares.shelves(question.shelves()), shared,
                question.benched() ? Optional.of(times) : Optional.empty(), cancel);
        purchases = new Purchases(question, wares, stores, wants, maker, cancel);
        builds = new Builds(question, stores, purchases, wants, times, busy, maker);
        choices = new Choices(question.targets(), maker);
        convert();
        demands = sought.map(one -> new Demands(one, wants.get(0), maker));
        if (demands.isPresent()) {
            new FlowRows(this, maker, 0, demands.get(), wants.get(0), wants.get(0).groups(), 0).add(cancel);
        } else if (bought.isPresent()) {
            for (int t = 0; t < wants.size(); t++) {
                new FlowRows(this, maker, t, new Demands(NONE), wants.get(t), wants.get(t).groups(), FOR_OTHERS).add(cancel);
            }
            Set<Integer> done = builds.lasting();
            worked.values().forEach(columns -> Arrays.stream(columns).forEach(done::add));
            programme = maker.make(purchases.settled(bought.get()), done);
            return;
        } else {
            hall(cancel);
        }
        int more = purchases.settle(helped, cancel);
        total.ifPresent(most -> maker.atMost(purchases.total(), most));
        int costly = busy < 0 ? more : builds.bench().more();
        programme = costly < 0 ? maker.make() : maker.make(costly);
    }

    private void hall(CancelToken cancel) {
        HallRows hall = new HallRows(this, choices, maker, cancel);
        for (int t = 0; t < wants.size(); t++) {
            hall.add(t, wants.get(t));
        }
        hall.finish();
    }

    /** What may be worked over for any target. */
    private Set<Conversion> conversions() {
        Set<Conversion> all = new LinkedHashSet<>();
        wants.forEach(one -> one.conversions().stream()
                .filter(turn -> one.groups().stream().anyMatch(group -> group.exact().contains(turn.to())))
                .forEach(all::add));
        return all;
    }

    private Set<Id> taken() {
        Set<Id> taken = new TreeSet<>();
        conversions().forEach(turn -> taken.addAll(turn.from().keySet()));
        return taken;
    }

    private void convert() {
        Set<Conversion> all = conversions();
        for (Conversion turn : all) {
            int[] columns = new int[question.stages().size()];
            int most = turn.times().orElse(Purchases.MANY);
            Sum sum = new Sum();
            for (int s = 0; s < columns.length; s++) {
                columns[s] = maker.column(turn.line() + " in " + s, 0, 0, most, 2);
                sum.add(1, columns[s]);
            }
            worked.put(turn, columns);
            if (columns.length > 1) {
                maker.atMost(sum, most);
            }
        }
        for (Id type : taken()) {
            for (int s = 0; s < question.stages().size(); s++) {
                Supplying left = supply(type, s, -1);
                maker.atLeast(left.sum(), -left.own());
            }
        }
    }

    /** A sum of columns, and what there is besides. */
    record Supplying(Sum sum, long own) {
    }

    /**
     * What there can be of a type in a stage.
     *
     * @param target the number of the target it is for, for parts that are built anew each time; -1 without those
     */
    Supplying supply(Id type, int stage, int target) {
        Sum sum = new Sum();
        purchases.add(type, stage, sum);
        builds.add(type, stage, target, sum);
        worked.forEach((turn, columns) -> {
            for (int s = 0; s <= stage; s++) {
                if (turn.from().containsKey(type)) {
                    sum.add(-turn.from().get(type), columns[s]);
                }
                if (given(turn).equals(type)) {
                    sum.add(turn.gives(), columns[s]);
                }
            }
        });
        return new Supplying(sum, stores.own().getOrDefault(type, 0));
    }

    /** The type that a conversion gives, told apart from the same type unconverted. */
    static Id given(Conversion turn) {
        return turn.line().child("worked over");
    }

    /** The conversions that a group of a target may be filled by. */
    Set<Id> converted(Wants wants, NeedGroup group) {
        return workedOver(wants, group).keySet();
    }

    /** The same, with what each gives that stands there for itself. */
    Map<Id, Id> workedOver(Wants wants, NeedGroup group) {
        Map<Id, Id> given = new TreeMap<>();
        for (Conversion turn : worked.keySet()) {
            if (group.exact().contains(turn.to()) && wants.conversions().contains(turn)) {
                given.put(given(turn), turn.to());
            }
        }
        return given;
    }

    /** Whether there is or can be had any of a type at all. */
    boolean obtainable(Id type) {
        return stores.own().getOrDefault(type, 0) > 0 || purchases.bring(type) || builds.give(type)
                || worked.keySet().stream().anyMatch(turn -> given(turn).equals(type));
    }

    /** Whether what there is of a type depends on the target. */
    boolean builtAnew(Id type) {
        return builds.givenAnew(type);
    }

    /** The programme. */
    public Programme programme() {
        return programme;
    }

    /** The programme where of some wares, by their lines, so many are bought in all stages together. */
    public Programme within(Map<Id, Between> bounds) {
        ProgrammeMaker more = new ProgrammeMaker(programme);
        bounds.forEach((line, between) -> {
            Sum all = new Sum();
            for (int w = 0; w < wares.size(); w++) {
                if (wares.get(w).line().equals(line) && purchases.columns(w)[0] != NONE) {
                    Arrays.stream(purchases.columns(w)).forEach(column -> all.add(1, column));
                }
            }
            if (between.least() > 0) {
                more.atLeast(all, between.least());
            }
            if (between.most() < Long.MAX_VALUE) {
                more.atMost(all, between.most());
            }
        });
        return more.make();
    }

    /** The wares, as the answers number them: some stand there several times, once for each that is bought. */
    public List<Ware> wares() {
        return wares;
    }

    /** Which of several plans of the same cost is liked best. */
    public Preference preference() {
        return new Tiers(question, wares, purchases, choices, builds.bench()).of(programme.columns().size());
    }

    /** How many purchases of each ware in each stage. */
    public long[][] bought(long[] values) {
        long[][] bought = new long[wares.size()][question.stages().size()];
        for (int w = 0; w < bought.length; w++) {
            for (int s = 0; s < bought[w].length; s++) {
                bought[w][s] = purchases.columns(w)[s] == NONE ? 0 : values[purchases.columns(w)[s]];
            }
        }
        return bought;
    }

    /** What is built: for each stage how many parts in each way. Those built anew for each target are left out. */
    public List<Map<BuildKey, Long>> built(long[] values) {
        return builds.read(values);
    }

    /**
     * What lies there for a target and comes loose between games, for a turnout to build of it what is truest; empty where
     * several people share what is bought.
     */
    public Optional<Supply> loose(long[] values, int target) {
        return question.shelves().size() > 1 ? Optional.empty() : Optional.of(builds.loose(values, target));
    }

    /** What is built for one target alone, of parts that come loose between games. */
    public Map<BuildKey, Long> builtAnew(long[] values, int target) {
        return builds.readAnew(values, target);
    }

    /** How many there are of each type when a target stands, with all that is built by then and nothing worked over. */
    public Map<Id, Integer> standing(long[] values, int target) {
        Map<Id, Integer> counts = new TreeMap<>();
        for (Id type : needed) {
            Sum sum = new Sum();
            int stage = question.targets().get(target).stage();
            purchases.add(type, stage, sum);
            builds.add(type, stage, target, sum);
            long count = sum.value(values) + stores.own().getOrDefault(type, 0);
            if (count > 0) {
                counts.put(type, (int) Math.min(1_000_000, count));
            }
        }
        return shares.plain(counts, question.targets().get(target).person());
    }

    /** What is built in each stage, but for the parts that no choice is made for. */
    public List<Work> work(long[] values) {
        return builds.bench().read(values);
    }

    /** The ways to build parts that no choice is made for, with how many parts there are. */
    public Map<BuildKey, Long> plainBuilds(long[] values) {
        Map<BuildKey, Long> plain = new TreeMap<>();
        for (Pool pool : stores.plain()) {
            Sum parts = new Sum();
            purchases.addParts(pool, question.stages().size() - 1, parts);
            plain.put(new BuildKey(pool, pool.ways().get(0)), parts.value(values) + pool.own());
        }
        return plain;
    }

    /** How often each conversion is made in each stage. */
    public Map<Conversion, long[]> worked(long[] values) {
        Map<Conversion, long[]> times = new LinkedHashMap<>();
        worked.forEach((turn, columns) -> times.put(turn,
                Arrays.stream(columns).mapToLong(column -> values[column]).toArray()));
        return times;
    }

    /** A key that all needs of the one target have in common which the very same may fill. */
    public Object group(Requirement need) {
        return wants.get(0).group(need).orElseThrow();
    }

    /** How many are missing of what the one target asks for, of all that has this key. */
    public long missing(long[] values, Object group) {
        return demands.orElseThrow().missing((NeedGroup) group, values);
    }

    /** Whether a target stands: all do but those of a choice that were not chosen. */
    public boolean stands(long[] values, int target) {
        return choices.stands(values, target);
    }

    /** How the things of several people are told apart. */
    public Shares shares() {
        return shares;
    }

    /** What the orders of a stage cost. */
    public Paid paid(long[] values, int stage) {
        return purchases.paid(values, stage);
    }
}
