package org.cantonment.stock.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** Spare pieces of players of an evening worked over for their own lists. What was worked over is not lent, like what is built. */
final class Workshop {

    /** A conversion that a seat may make. */
    record Bench(int seat, Conversion conversion) {
    }

    private Workshop() {
    }

    static List<Bench> of(Table table) {
        List<Bench> benches = new ArrayList<>();
        for (int s = 0; s < table.seats().size(); s++) {
            for (Conversion conversion : table.seats().get(s).allowance().conversions()) {
                if (most(conversion, table.lenders().get(s).supply()) > 0) {
                    benches.add(new Bench(s, conversion));
                }
            }
        }
        return benches;
    }

    /** How often a conversion can be made of what lies there ready. */
    private static int most(Conversion conversion, Supply supply) {
        Map<Id, Integer> ready = new TreeMap<>();
        supply.stacks().forEach(stack -> ready.put(stack.what(), stack.counted()));
        int most = conversion.times().orElse(Integer.MAX_VALUE);
        for (Map.Entry<Id, Integer> one : conversion.from().entrySet()) {
            most = Math.min(most, ready.getOrDefault(one.getKey(), 0) / one.getValue());
        }
        return Math.min(most, 10_000);
    }

    /** Every conversion made as often as can be, of pieces that lie there all the same: no evening has more. */
    static Table atMost(Table table, List<Bench> benches) {
        Table all = table;
        for (Bench bench : benches) {
            Supply supply = all.lenders().get(bench.seat()).supply();
            all = all.with(bench.seat(), with(supply, bench.conversion(), most(bench.conversion(),
                    table.lenders().get(bench.seat()).supply())));
        }
        return all;
    }

    /** One conversion made once more; the same table if it cannot be. */
    static Table once(Table table, Bench bench) {
        Supply supply = table.lenders().get(bench.seat()).supply();
        long made = supply.frames().stream().filter(one -> one.part().equals(bench.conversion().line())).count();
        if (most(bench.conversion(), supply) < 1 || made >= bench.conversion().times().orElse(Integer.MAX_VALUE)) {
            return table;
        }
        List<Stack> left = supply.stacks().stream().map(stack -> less(stack,
                bench.conversion().from().getOrDefault(stack.what(), 0))).toList();
        return table.with(bench.seat(), with(new Supply(left, supply.frames(), supply.caps(), List.of()), bench.conversion(), 1));
    }

    private static Stack less(Stack stack, int count) {
        int known = Math.min(count, stack.known());
        return new Stack(stack.what(), stack.known() - known, stack.guessed() - (count - known), stack.unknown());
    }

    private static Supply with(Supply supply, Conversion conversion, int times) {
        List<Frames> frames = new ArrayList<>(supply.frames());
        frames.add(new Frames(conversion.line(), times, false, List.of(new Way(conversion.line(),
                Map.of(conversion.to(), conversion.gives()))), -1, Fixing.GLUED));
        return new Supply(supply.stacks(), frames, supply.caps(), List.of());
    }
}
