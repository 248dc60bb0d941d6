package org.cantonment.stock.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;

/**
 * Finds who must lend what to whom so that all can play.
 *
 * <p>It fills as many places as can be filled. Among such ways it takes one with the fewest lenders, then with the fewest
 * pieces lent, then the truest, then the fewest guessed. Only built pieces are lent; frames are built, and spare pieces worked
 * over, by their owner for his own list. What working over does is tried one after another: where that falls short of what no
 * evening goes beyond, the answer says that it may not be the best.
 */
public final class Lending {

    /** With more lenders than this that are neither useless nor needed in any case, the fewest are not proven. */
    static final int MOST_LENDERS = 12;
    private static final int STEPS = 2_000;
    private static final int TRIALS = 200;

    private final Table home;
    private Table table;
    private final CancelToken cancel;
    private int bound;
    private boolean fewest = true;

    private Lending(Table table, CancelToken cancel) {
        this.home = table;
        this.table = table;
        this.cancel = cancel;
    }

    /**
     * Asks.
     *
     * @param seats who plays, each once
     * @param lenders everybody's pieces, those of the players of the evening too
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static Evening of(Catalogue catalogue, List<Seat> seats, List<Lender> lenders, CancelToken cancel) {
        return new Lending(Table.of(catalogue, seats, lenders), cancel).run();
    }

    private Evening run() {
        Set<Integer> all = new TreeSet<>();
        for (int l = 0; l < table.lenders().size(); l++) {
            all.add(l);
        }
        Search.Outcome most = ask(all);
        bound = most.bound();
        List<Workshop.Bench> benches = Workshop.of(table);
        if (most.best().filled() < table.needed() && !benches.isEmpty()) {
            bound = Search.of(Workshop.atMost(table, benches), all, STEPS, cancel).bound();
            most = workOver(all, most, benches);
        }
        Flow chosen = choose(all, most.best());
        List<Lent> moves = chosen.moves();
        Map<Id, Supply> supplies = supplies(moves);
        Map<Id, Set<Id>> sharing = new TreeMap<>();
        table.lenders().forEach(lender -> sharing.put(lender.who(), lender.sharing()));
        return new Evening(turnouts(supplies), supplies,
                moves.stream().filter(lent -> !sharing.get(lent.from()).contains(lent.to())).toList(), gaps(most.best()),
                Math.max(bound, chosen.filled()), fewest);
    }

    /** Works over what helps, one after another. */
    private Search.Outcome workOver(Set<Integer> all, Search.Outcome before, List<Workshop.Bench> benches) {
        Search.Outcome most = before;
        int tried = 0;
        for (int b = 0; b < benches.size() && tried < TRIALS && most.best().filled() < bound; b++) {
            Table trial = Workshop.once(table, benches.get(b));
            while (trial != table && tried++ < TRIALS) {
                Search.Outcome outcome = Search.of(trial, all, STEPS, cancel);
                if (outcome.best().filled() <= most.best().filled()) {
                    break;
                }
                most = outcome;
                table = trial;
                trial = Workshop.once(table, benches.get(b));
            }
        }
        return most;
    }

    private Search.Outcome ask(Set<Integer> lending) {
        cancel.check();
        return Search.of(table, lending, STEPS, cancel);
    }

    /** The fewest lenders who do as well as all together. */
    private Flow choose(Set<Integer> all, Flow most) {
        Set<Integer> needed = new TreeSet<>();
        List<Integer> others = new ArrayList<>();
        for (int lender : all) {
            Set<Integer> without = new TreeSet<>(all);
            without.remove(lender);
            if (ask(without).best().filled() < most.filled()) {
                needed.add(lender);
            } else {
                others.add(lender);
            }
        }
        if (others.size() > MOST_LENDERS) {
            fewest = false;
            return oneByOne(all, others, most);
        }
        for (int size = 0; size <= others.size(); size++) {
            List<Set<Integer>> choices = new ArrayList<>();
            subsets(others, 0, size, needed, choices);
            Flow best = null;
            for (Set<Integer> choice : choices) {
                Flow flow = ask(choice).best();
                if (flow.filled() == most.filled() && (best == null || flow.price() < best.price())) {
                    best = flow;
                }
            }
            if (best != null) {
                return best;
            }
        }
        return most;
    }

    private Flow oneByOne(Set<Integer> all, List<Integer> others, Flow most) {
        Set<Integer> left = new TreeSet<>(all);
        Flow best = most;
        for (int lender : others) {
            Set<Integer> without = new TreeSet<>(left);
            without.remove(lender);
            Flow flow = ask(without).best();
            if (flow.filled() == most.filled()) {
                left = without;
                best = flow;
            }
        }
        return best;
    }

    private static void subsets(List<Integer> from, int at, int size, Set<Integer> taken, List<Set<Integer>> into) {
        if (size == 0) {
            into.add(new TreeSet<>(taken));
            return;
        }
        for (int i = at; i <= from.size() - size; i++) {
            Set<Integer> more = new TreeSet<>(taken);
            more.add(from.get(i));
            subsets(from, i + 1, size - 1, more, into);
        }
    }

    private Map<Id, Supply> supplies(List<Lent> loans) {
        Map<Id, Supply> supplies = new TreeMap<>();
        for (int s = 0; s < table.seats().size(); s++) {
            Id player = table.seats().get(s).player();
            supplies.put(player, after(home.lenders().get(s).supply(), player, loans));
        }
        return supplies;
    }

    private Map<Id, Turnout> turnouts(Map<Id, Supply> supplies) {
        Map<Id, Turnout> turnouts = new TreeMap<>();
        table.seats().forEach(seat -> turnouts.put(seat.player(), Depot.of(table.catalogue(), supplies.get(seat.player()),
                seat.allowance()).turnout(seat.needs(), cancel)));
        return turnouts;
    }

    private static Supply after(Supply before, Id player, List<Lent> loans) {
        Map<Id, Stack> stacks = new TreeMap<>();
        before.stacks().forEach(stack -> stacks.put(stack.what(), stack));
        Map<Id, Integer> came = new TreeMap<>();
        for (Lent lent : loans) {
            if (lent.from().equals(player)) {
                Stack stack = stacks.get(lent.type());
                int known = Math.min(lent.count(), stack.known());
                stacks.put(lent.type(), new Stack(lent.type(), stack.known() - known,
                        stack.guessed() - (lent.count() - known), stack.unknown()));
            } else if (lent.to().equals(player)) {
                came.merge(lent.type(), lent.count(), Integer::sum);
            }
        }
        return new Supply(List.copyOf(stacks.values()), before.frames(), before.caps(), List.of()).plus(Supply.pieces(came));
    }

    private List<Gap> gaps(Flow flow) {
        boolean[] wanting = flow.shortWants();
        List<Gap> gaps = new ArrayList<>();
        boolean[] told = new boolean[wanting.length];
        for (int w = 0; w < wanting.length; w++) {
            if (wanting[w] && !told[w]) {
                gaps.add(gap(flow, wanting, told, w));
            }
        }
        return gaps.stream().filter(gap -> gap.lacking() > 0).toList();
    }

    /** All wants that hang together with this one by types that stand for both. */
    private Gap gap(Flow flow, boolean[] wanting, boolean[] told, int first) {
        Map<Id, List<Requirement>> needs = new TreeMap<>();
        Map<Id, Integer> from = new TreeMap<>();
        List<Integer> next = new ArrayList<>(List.of(first));
        told[first] = true;
        int needed = 0;
        while (!next.isEmpty()) {
            int w = next.remove(next.size() - 1);
            Want want = table.wants().get(w);
            needed += want.count();
            needs.computeIfAbsent(table.seats().get(want.seat()).player(), id -> new ArrayList<>()).addAll(want.needs());
            flow.standing(w).forEach((type, count) -> from.merge(type, count, Integer::sum));
            for (int other = 0; other < wanting.length; other++) {
                if (wanting[other] && !told[other] && akin(want, table.wants().get(other))) {
                    told[other] = true;
                    next.add(other);
                }
            }
        }
        return new Gap(needs, from, needed, from.values().stream().mapToInt(Integer::intValue).sum(),
                !flow.settled().itself().isEmpty());
    }

    private static boolean akin(Want one, Want other) {
        Set<Id> types = new TreeSet<>(one.accepted().types().keySet());
        one.accepted().standIns().values().forEach(types::addAll);
        return other.accepted().types().keySet().stream().anyMatch(types::contains)
                || other.accepted().standIns().values().stream().flatMap(Set::stream).anyMatch(types::contains);
    }
}
