package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.StandIn;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.turnout.Instance.Direct;
import org.cantonment.stock.turnout.Instance.Hub;
import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Instance.Turn;

/** Puts the outcomes of all instances together to one turnout. */
final class Answer {

    private static final Truth[] TRUTHS = Truth.values();

    private static final class Pool {
        private final int type;
        private final Truth truth;
        private final StandIn line;
        private int left;

        Pool(int type, Truth truth, StandIn line, int left) {
            this.type = type;
            this.truth = truth;
            this.line = line;
            this.left = left;
        }

        /** Gives as many as are left, at most so many, and says how many. */
        int give(int[] standing, int at, int most) {
            int count = Math.min(most, left);
            standing[at] += count;
            left -= count;
            return count;
        }
    }

    private final Before before;
    private final Map<Requirement, List<Posting>> standing = new HashMap<>();
    private final List<Build> builds = new ArrayList<>();
    private final List<Worked> worked = new ArrayList<>();
    private final List<Guess> guesses = new ArrayList<>();
    private final List<Reason> reasons = new ArrayList<>();
    private int needed;
    private int filled;
    private int bound;
    private boolean truest = true;

    Answer(Before before) {
        this.before = before;
    }

    void add(Instance in, Search.Outcome outcome) {
        needed += in.needed();
        filled += outcome.best().filled();
        bound += outcome.bound();
        truest &= outcome.truest();
        post(in, outcome.best());
        for (Lump lump : in.lumps()) {
            build(lump, outcome.built());
        }
        guess(in, outcome.best());
        work(in, outcome.best());
        reasons.addAll(Explainer.reasons(in, outcome));
    }

    /** The turnout, its postings in the order in which the needs were asked. */
    Turnout turnout(List<Requirement> asked, List<Requirement> aside) {
        Map<Requirement, Integer> places = new HashMap<>(2 * asked.size());
        asked.forEach(need -> places.putIfAbsent(need, places.size()));
        List<List<Posting>> byNeed = new ArrayList<>(Collections.nCopies(places.size(), List.of()));
        standing.forEach((need, own) -> byNeed.set(places.get(need), own));
        List<Posting> postings = new ArrayList<>();
        for (List<Posting> own : byNeed) {
            if (own.size() > 1) {
                own.sort(Comparator.comparing(Posting::truth).thenComparing(Posting::type));
            }
            postings.addAll(own);
        }
        reasons.sort(Comparator.comparingInt(
                (Reason reason) -> reason.needs().stream().mapToInt(places::get).min().orElse(0)));
        return new Turnout(postings, needed, filled, bound, truest, builds, worked, guesses, reasons, aside);
    }

    private void post(Instance in, Network best) {
        List<List<Pool>> pools = pools(in, best);
        for (int c = 0; c < pools.size(); c++) {
            List<Pool> pool = pools.get(c);
            if (pool.size() > 1) {
                pool.sort(Comparator.comparing((Pool one) -> one.truth).thenComparingInt(one -> one.type));
            }
            List<Requirement> needs = in.classes().get(c).needs();
            int[][] standing = new int[needs.size()][pool.size()];
            if (in.remembers()) {
                again(in, needs, pool, standing);
            }
            int at = 0;
            for (int n = 0; n < standing.length; n++) {
                int more = needs.get(n).count();
                for (int had : standing[n]) {
                    more -= had;
                }
                while (more > 0 && at < pool.size()) {
                    more -= pool.get(at).give(standing[n], at, more);
                    at += pool.get(at).left == 0 ? 1 : 0;
                }
                List<Posting> own = this.standing.computeIfAbsent(needs.get(n), need -> new ArrayList<>(2));
                for (int p = 0; p < pool.size(); p++) {
                    if (standing[n][p] > 0) {
                        own.add(new Posting(needs.get(n), in.types().get(pool.get(p).type), standing[n][p],
                                pool.get(p).truth, Optional.ofNullable(pool.get(p).line)));
                    }
                }
            }
        }
    }

    /** Of those who came, whoever stood for a need last time stands there again. */
    private void again(Instance in, List<Requirement> needs, List<Pool> pool, int[][] standing) {
        for (int n = 0; n < standing.length; n++) {
            int more = needs.get(n).count();
            for (int p = 0; p < pool.size(); p++) {
                int stood = before.stood(needs.get(n), in.types().get(pool.get(p).type));
                more -= pool.get(p).give(standing[n], p, Math.min(more, stood));
            }
        }
    }

    private static List<List<Pool>> pools(Instance in, Network best) {
        List<List<Pool>> pools = new ArrayList<>();
        for (int c = 0; c < in.classes().size(); c++) {
            List<Pool> pool = new ArrayList<>();
            Direct direct = in.direct()[c];
            for (int i = 0; i < direct.size(); i++) {
                int count = best.direct(c, i);
                if (count > 0) {
                    StandIn line = direct.lines()[i] < 0 ? null : in.lines().get(direct.lines()[i]);
                    pool.add(new Pool(direct.types()[i], TRUTHS[direct.tiers()[i]], line, count));
                }
            }
            for (int i = 0; i < in.turns().size(); i++) {
                int count = best.converted(i, c);
                if (count > 0) {
                    pool.add(new Pool(in.turns().get(i).to(), Truth.CONVERSION, null, count));
                }
            }
            pools.add(pool);
        }
        for (int h = 0; h < in.hubs().size(); h++) {
            share(in.hubs().get(h), h, best, pools);
        }
        return pools;
    }

    /** Whoever comes through a shared line goes to the classes in their order; anyone who came may go anywhere there. */
    private static void share(Hub hub, int h, Network best, List<List<Pool>> pools) {
        int type = 0;
        int left = hub.types().length == 0 ? 0 : best.hubIn(h, 0);
        for (int i = 0; i < hub.classes().length; i++) {
            for (int wanted = best.hubOut(h, i); wanted > 0;) {
                while (left == 0) {
                    type++;
                    left = best.hubIn(h, type);
                }
                int count = Math.min(left, wanted);
                pools.get(hub.classes()[i]).add(new Pool(hub.types()[type], Truth.STAND_IN, hub.line(), count));
                left -= count;
                wanted -= count;
            }
        }
    }

    private void build(Lump lump, int[] built) {
        Frames frames = lump.frames();
        for (int w = 0; w < lump.ways(); w++) {
            int count = built[lump.from() + w];
            if (count > 0 && w != frames.built()) {
                builds.add(new Build(frames.part(), frames.ways().get(w).build(), count, frames.built() >= 0,
                        frames.fixing()));
            }
        }
    }

    /** Of what is worked over as much as can be is what is built: what lies there ready may be painted. */
    private void work(Instance in, Network best) {
        int[] fresh = new int[in.types().size()];
        for (int l = 0; l < in.lumps().size(); l++) {
            for (int t : in.lumps().get(l).types()) {
                boolean asItIs = in.lumps().get(l).asItIs(t);
                fresh[t] += in.lumps().get(l).feeds() && !asItIs ? best.drawn(l, t) : 0;
            }
        }
        for (int i = 0; i < in.turns().size(); i++) {
            Turn turn = in.turns().get(i);
            int gives = turn.conversion().gives();
            int times = (best.converted(i) + gives - 1) / gives;
            Map<Id, Integer> built = new TreeMap<>();
            for (int k = 0; k < turn.from().length; k++) {
                int from = Math.min(times * turn.takes()[k], fresh[turn.from()[k]]);
                fresh[turn.from()[k]] -= from;
                if (from > 0) {
                    built.put(in.types().get(turn.from()[k]), from);
                }
            }
            if (times > 0) {
                worked.add(new Worked(turn.conversion(), times, built));
            }
        }
    }

    private void guess(Instance in, Network best) {
        for (int t = 0; t < in.types().size(); t++) {
            if (best.guessed(t) > 0) {
                guesses.add(new Guess(in.types().get(t), best.guessed(t)));
            }
        }
        for (int l = 0; l < in.lumps().size(); l++) {
            if (in.lumps().get(l).frames().guessed() && best.fromLump(l) > 0) {
                guesses.add(new Guess(in.lumps().get(l).frames().part(), best.fromLump(l)));
            }
        }
    }
}
