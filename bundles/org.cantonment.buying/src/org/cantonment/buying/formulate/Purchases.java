package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cantonment.buying.market.Terms;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.solve.Column;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;

/** How many of each ware are bought in each stage, at what cost. */
final class Purchases {

    /** More than is bought or built of anything. */
    static final int MANY = 100_000;

    private final Question question;
    private final List<Ware> wares;
    private final Stores stores;
    private final ProgrammeMaker maker;
    private final int[][] columns;
    private final long[] useful;
    private final long[] reach;
    private final Map<Id, List<Integer>> bySeller = new TreeMap<>();
    private final Map<Id, List<int[]>> bringing = new HashMap<>();
    private final List<SellerRows> sellers = new ArrayList<>();
    private final Sum total = new Sum();

    Purchases(Question question, List<Ware> wares, Stores stores, List<Wants> wants, ProgrammeMaker maker,
            CancelToken cancel) {
        this.question = question;
        this.wares = wares;
        this.stores = stores;
        this.maker = maker;
        columns = new int[wares.size()][question.stages().size()];
        useful = Usefulness.of(wares, stores, wants);
        Map<Id, Ware> dearest = SellerRows.dearest(wares);
        reach = IntStream.range(0, wares.size()).mapToLong(w -> SellerRows.reach(terms(w), wares.get(w), dearest)).toArray();
        lay(cancel);
        force();
        for (int w = 0; w < wares.size(); w++) {
            if (columns[w][0] != Formulation.NONE) {
                for (Map.Entry<Id, Integer> one : stores.direct(w).entrySet()) {
                    bringing.computeIfAbsent(one.getKey(), id -> new ArrayList<>()).add(new int[] {w, one.getValue()});
                }
            }
        }
    }

    private Terms terms(int ware) {
        return question.market().terms().get(wares.get(ware).seller());
    }

    private void lay(CancelToken cancel) {
        for (int w = 0; w < wares.size(); w++) {
            cancel.check();
            Ware ware = wares.get(w);
            boolean forced = question.atLeast().containsKey(ware.box());
            long most = Math.min(ware.most(), MANY);
            if (!forced) {
                most = Math.min(most, useful[w] + reach[w]);
            }
            Arrays.fill(columns[w], Formulation.NONE);
            if (most < 1) {
                continue;
            }
            Sum all = new Sum();
            for (int s = 0; s < columns[w].length; s++) {
                columns[w][s] = maker.column(ware.line() + " in " + s, ware.cost().getAmountMinorLong(), 0, most, 0);
                all.add(1, columns[w][s]);
            }
            if (columns[w].length > 1 && most == ware.most()) {
                maker.atMost(all, most);
            }
            bySeller.computeIfAbsent(ware.seller(), id -> new ArrayList<>()).add(w);
        }
    }

    private void force() {
        question.atLeast().forEach((box, count) -> {
            Sum all = new Sum();
            for (int w = 0; w < wares.size(); w++) {
                if (wares.get(w).box().equals(box) && columns[w][0] != Formulation.NONE) {
                    for (int column : columns[w]) {
                        all.add(wares.get(w).boxes(), column);
                    }
                }
            }
            maker.atLeast(all, count);
        });
    }

    int[] columns(int ware) {
        return columns[ware];
    }

    private boolean arrives(int ware, int ordered, int stage) {
        return ordered <= stage && question.stages().get(ordered).reaches(question.stages().get(stage),
                question.market().days(wares.get(ware)));
    }

    /** Adds a factor times how many of a ware are there in a stage. */
    void addWare(int ware, int factor, int stage, Sum into) {
        for (int s = 0; s <= stage && columns[ware][0] != Formulation.NONE; s++) {
            if (arrives(ware, s, stage)) {
                into.add(factor, columns[ware][s]);
            }
        }
    }

    void addParts(Pool pool, int stage, Sum into) {
        pool.bought().forEach((ware, count) -> addWare(ware, count, stage, into));
    }

    void add(Id type, int stage, Sum into) {
        for (int[] one : bringing.getOrDefault(type, List.of())) {
            addWare(one[0], one[1], stage, into);
        }
    }

    boolean bring(Id type) {
        return bringing.containsKey(type);
    }

    /**
     * Adds what sellers ask beside their prices, and the budgets.
     *
     * @param helped the stage whose budget may be exceeded; -1 for none
     * @return what the budget is exceeded by, as a column; {@link Formulation#NONE} for none
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    int settle(int helped, CancelToken cancel) {
        int stages = question.stages().size();
        List<Sum> spent = new ArrayList<>();
        for (int s = 0; s < stages; s++) {
            Sum sum = new Sum();
            spent.add(sum);
            for (int w = 0; w < wares.size(); w++) {
                if (columns[w][s] != Formulation.NONE) {
                    sum.add(wares.get(w).cost().getAmountMinorLong(), columns[w][s]);
                }
            }
            cancel.check();
            for (Map.Entry<Id, List<Integer>> seller : bySeller.entrySet()) {
                Terms terms = question.market().terms().get(seller.getKey());
                if (terms != null && !terms.plain()) {
                    SellerRows rows = new SellerRows(terms, s, maker);
                    for (int w : seller.getValue()) {
                        rows.ware(wares.get(w), columns[w][s], upper(w));
                    }
                    rows.finish(sum);
                    sellers.add(rows);
                }
            }
        }
        spent.forEach(sum -> total.add(1, sum));
        int more = helped < 0 ? Formulation.NONE : maker.column("more money in " + helped, 0, 0, Column.MOST, 0);
        budgets(spent, helped, more);
        return more;
    }

    /** What all stages cost together. */
    Sum total() {
        return total;
    }

    private long upper(int ware) {
        Ware one = wares.get(ware);
        long asked = question.atLeast().getOrDefault(one.box(), 0);
        return Math.min(Math.min(one.most(), MANY), Math.max(asked, useful[ware] + reach[ware]));
    }

    private void budgets(List<Sum> spent, int helped, int more) {
        Sum all = new Sum();
        long sum = 0;
        for (int s = 0; s < spent.size(); s++) {
            if (question.stages().get(s).budget().isEmpty()) {
                if (question.saved()) {
                    return;
                }
                continue;
            }
            long budget = question.stages().get(s).budget().get().getAmountMinorLong();
            all.add(1, spent.get(s));
            sum += budget;
            Sum limited = new Sum().add(1, question.saved() ? all : spent.get(s));
            if (helped >= 0 && (question.saved() ? s >= helped : s == helped)) {
                limited.add(-1, more);
            }
            maker.atMost(limited, question.saved() ? sum : budget);
        }
    }

    Paid paid(long[] values, int stage) {
        long goods = 0;
        for (int w = 0; w < wares.size(); w++) {
            if (columns[w][stage] != Formulation.NONE) {
                goods += wares.get(w).cost().getAmountMinorLong() * values[columns[w][stage]];
            }
        }
        long sending = 0;
        long off = 0;
        for (SellerRows rows : sellers) {
            if (rows.stage() == stage) {
                sending += rows.sending(values);
                off += rows.off(values);
            }
        }
        return new Paid(goods, sending, off);
    }

    /** The value of each column where it is settled what is bought. */
    Map<Integer, Long> settled(List<Purchase> bought) {
        Map<Integer, Long> values = new TreeMap<>();
        long[] free = new long[wares.size()];
        for (int w = 0; w < free.length; w++) {
            free[w] = wares.get(w).most();
            for (int s = 0; s < columns[w].length && columns[w][s] != Formulation.NONE; s++) {
                values.put(columns[w][s], 0L);
            }
        }
        for (Purchase one : bought) {
            long left = one.count();
            for (int w = 0; w < free.length && left > 0; w++) {
                if (wares.get(w).line().equals(one.ware().line()) && columns[w][one.stage()] != Formulation.NONE) {
                    long some = Math.min(left, free[w]);
                    values.merge(columns[w][one.stage()], some, Long::sum);
                    free[w] -= some;
                    left -= some;
                }
            }
        }
        return values;
    }
}
