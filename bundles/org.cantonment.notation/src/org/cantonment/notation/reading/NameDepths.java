package org.cantonment.notation.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.model.ruleset.Let;
import org.cantonment.model.ruleset.LetUse;
import org.cantonment.model.ruleset.Part;

/**
 * How deep the names of 'let' lines lean on one another, each looked at once, however many there are: circles are found
 * as strongly connected components (Tarjan 1972), without recursion.
 */
final class NameDepths {

    /** What leans on itself. */
    static final int CIRCLE = 0;

    private static final class Visit {
        private final Let let;
        private final Iterator<Let> uses;
        private final int number;
        private int low;

        Visit(Let let, int number) {
            this.let = let;
            this.uses = uses(let).iterator();
            this.number = number;
            this.low = number;
        }
    }

    private final Map<Let, Integer> depths = new HashMap<>();
    private final Map<Let, Integer> numbers = new HashMap<>();
    private final Deque<Let> waiting = new ArrayDeque<>();
    private final Set<Let> isWaiting = new HashSet<>();

    /** 1 for what leans on no other name, {@link #CIRCLE} for what leans on itself. */
    int of(Let let) {
        if (!depths.containsKey(let)) {
            visit(let);
        }
        return depths.get(let);
    }

    private void visit(Let start) {
        Deque<Visit> path = new ArrayDeque<>();
        path.push(enter(start));
        while (!path.isEmpty()) {
            Visit top = path.peek();
            if (top.uses.hasNext()) {
                Let next = top.uses.next();
                if (!numbers.containsKey(next)) {
                    path.push(enter(next));
                } else if (isWaiting.contains(next)) {
                    top.low = Math.min(top.low, numbers.get(next));
                }
            } else {
                path.pop();
                leave(top);
                if (!path.isEmpty()) {
                    path.peek().low = Math.min(path.peek().low, top.low);
                }
            }
        }
    }

    private Visit enter(Let let) {
        Visit visit = new Visit(let, numbers.size());
        numbers.put(let, visit.number);
        waiting.push(let);
        isWaiting.add(let);
        return visit;
    }

    private void leave(Visit visit) {
        if (visit.low != visit.number) {
            return;
        }
        boolean alone = waiting.peek() == visit.let && !uses(visit.let).contains(visit.let);
        Let last;
        do {
            last = waiting.pop();
            isWaiting.remove(last);
            depths.put(last, alone ? depth(last) : CIRCLE);
        } while (last != visit.let);
    }

    private int depth(Let let) {
        int deepest = 0;
        for (Let used : uses(let)) {
            deepest = Math.max(deepest, depths.get(used));
        }
        return deepest + 1;
    }

    private static List<Let> uses(Let let) {
        List<Let> used = new ArrayList<>();
        if (let.getExpression() != null) {
            for (Part part : let.getExpression().getParts()) {
                if (part instanceof LetUse use && use.getLet() != null && !use.getLet().eIsProxy()) {
                    used.add(use.getLet());
                }
            }
        }
        return used;
    }
}
