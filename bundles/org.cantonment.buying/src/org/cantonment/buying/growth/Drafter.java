package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.buying.growth.Draft.Load;
import org.cantonment.buying.growth.Draft.Side;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.SupportView;

/**
 * Drafts lists: formations, formations in formations, supports, one thing after the other, from few points to many. Of
 * drafts of about as many points those are grown on that cost least beyond what is there, have what is liked, and keep what
 * was learned.
 */
final class Drafter {

    private static final long NEVER = Long.MAX_VALUE / 4;
    private static final int TROOPS = 14;
    private static final int BUCKETS = 100;
    private static final int ROUNDS = 8;
    private static final long LEAST_WEIGHT = 300;

    private final Brief brief;
    private final Larder larder;
    private final CancelToken cancel;
    private final List<Cut> cuts;
    private final long limit;
    private final long width;
    private final boolean asksFirst;
    private final Map<FormationView, Long> least = new HashMap<>();
    private final TreeMap<Long, Bucket> buckets = new TreeMap<>();
    /** What is liked or advised is worth so much money here; what must be, more than anything that it may cost. */
    private long weight = LEAST_WEIGHT;
    private long must = LEAST_WEIGHT;
    private boolean complete = true;

    /** @param asksFirst whether only lists are wanted that have what is wished for first */
    Drafter(Brief brief, Larder larder, List<Cut> cuts, boolean asksFirst, CancelToken cancel) {
        this.brief = brief;
        this.larder = larder;
        this.cuts = cuts;
        this.asksFirst = asksFirst;
        this.cancel = cancel;
        limit = brief.situation().points().orElseThrow();
        width = Math.max(1, limit / BUCKETS);
    }

    /**
     * Lists within the limit that keep what was learned: those first that have most of what is liked, then those that cost
     * least.
     *
     * @param starts drafts that are grown on; if there are none, lists begin with nothing
     */
    List<Draft> drafts(List<Draft> starts) {
        if (starts.isEmpty()) {
            Draft nothing = new Draft(List.of(), List.of(), new Load(0, 0, 0, 0, new long[2 * cuts.size()]), new int[0]);
            larder.formations().forEach(one -> top(nothing, 0, one));
        }
        starts.stream().map(this::counted).filter(one -> one.load().points() + owed(one) <= limit).forEach(one ->
                bucket(one.load().points()).offer(one, same -> same, one.load().signature(), score(one.load())));
        List<Draft> done = new ArrayList<>();
        while (!buckets.isEmpty()) {
            Bucket bucket = buckets.firstEntry().getValue();
            for (int round = 0; round < ROUNDS && !bucket.empty(); round++) {
                cancel.check();
                for (Draft draft : bucket.take()) {
                    grow(draft);
                    if (finished(draft)) {
                        done.add(draft);
                    }
                }
            }
            complete &= bucket.empty() && bucket.complete();
            buckets.pollFirstEntry();
        }
        done.sort(Comparator.comparingLong(this::against).thenComparingInt((Draft one) -> -Long.bitCount(one.load().traits() & larder.likedTraits()))
                .thenComparingLong(one -> one.load().money()).thenComparingLong(one -> -one.load().points())
                .thenComparingInt(one -> one.troops().size()).thenComparing(Draft::key));
        return done;
    }

    /** How much of what was learned a draft does not keep: of a finished one, of advice. */
    private long against(Draft draft) {
        long lacking = 0;
        for (int c = 0; c < cuts.size(); c++) {
            lacking += Math.min(6, cuts.get(c).lacks(draft.load().sums(), 2 * c, draft.load().points()));
        }
        return lacking;
    }

    /** Whether the drafts are all that there are, but for those that were cut off. */
    boolean complete() {
        return complete && larder.complete();
    }

    private boolean finished(Draft draft) {
        if (draft.load().points() < brief.least() && brief.least() > 0 && !surcharged() || owed(draft) > 0
                || draft.troops().stream().anyMatch(troop -> troop.open() >= 0)
                || asksFirst && (draft.load().traits() & larder.firstTrait()) == 0) {
            return false;
        }
        for (int c = 0; c < cuts.size(); c++) {
            if (cuts.get(c).binding() && cuts.get(c).lacks(draft.load().sums(), 2 * c, draft.load().points()) > 0) {
                return false;
            }
        }
        return true;
    }

    private boolean surcharged() {
        return !brief.ruling().surcharged().isEmpty();
    }

    private Bucket bucket(long points) {
        return buckets.computeIfAbsent(points / width, key -> new Bucket());
    }

    private long score(Load load) {
        long score = load.money();
        for (int c = 0; c < cuts.size(); c++) {
            score += (cuts.get(c).binding() ? must : weight) * Math.min(6, cuts.get(c).lacks(load.sums(), 2 * c, load.points()));
        }
        score += asksFirst && (load.traits() & larder.firstTrait()) == 0 ? must : 0;
        return score - weight * Long.bitCount(load.traits() & ~larder.firstTrait());
    }

    /** What a draft must still take at the least, in points. */
    private long owed(Draft draft) {
        long owed = 0;
        for (Troop troop : draft.troops()) {
            for (int b = 0; b < troop.fills().size(); b++) {
                int lacks = Math.max(0, troop.lacks(b));
                owed += lacks == 0 ? 0 : lacks * place(troop.of().billets().get(b), troop.fills().get(b).room());
            }
        }
        return Math.min(NEVER, owed);
    }

    private long place(BilletView billet, int room) {
        return room == Troop.OPEN ? billet.rooms().stream().mapToLong(one -> cheapest(one.of())).min().orElse(NEVER)
                : cheapest(billet.rooms().get(room).of());
    }

    private long cheapest(Selector of) {
        return larder.items(of).stream().mapToLong(item -> item.taking() == null ? least((FormationView) item.choice())
                : item.points()).min().orElse(NEVER);
    }

    private long least(FormationView formation) {
        Long known = least.get(formation);
        if (known == null) {
            least.put(formation, NEVER);
            long sum = formation.points();
            for (BilletView billet : formation.billets()) {
                sum += billet.rooms().stream().mapToLong(room -> room.span().min() == 0 ? 0
                        : Math.min(NEVER, room.span().min() * cheapest(room.of()))).min().orElse(0);
            }
            known = Math.min(NEVER, sum);
            least.put(formation, known);
        }
        return known;
    }

    private void grow(Draft draft) {
        long owed = owed(draft);
        for (int t = 0; t < draft.troops().size(); t++) {
            int open = draft.troops().get(t).open();
            if (open >= 0) {
                billet(draft, owed - place(draft.troops().get(t).of().billets().get(open),
                        draft.troops().get(t).fills().get(open).room()), t, open);
                return;
            }
        }
        for (int t = 0; t < draft.troops().size(); t++) {
            for (int b = 0; b < draft.troops().get(t).fills().size(); b++) {
                billet(draft, owed, t, b);
            }
        }
        brief.ruling().supports().forEach(support -> support(draft, support));
        if (draft.troops().size() < TROOPS) {
            larder.formations().forEach(one -> top(draft, owed, one));
        }
    }

    private void billet(Draft draft, long owed, int t, int b) {
        Troop troop = draft.troops().get(t);
        List<Room> rooms = troop.of().billets().get(b).rooms();
        for (int r = 0; r < rooms.size(); r++) {
            if (troop.takes(b, r)) {
                for (Item item : larder.items(rooms.get(r).of())) {
                    int room = r;
                    offer(draft, item, owed, -1, parent -> placed(parent, t, b, room, item));
                }
            }
        }
    }

    private void support(Draft draft, SupportView support) {
        if (!support.permission().allowed()) {
            return;
        }
        List<Side> taken = draft.sides().stream().filter(side -> side.support() == support.index()).toList();
        int groups = support.per().empty() ? 1 : count(draft, support.per()) / Math.max(1, support.perCount());
        for (int r = 0; r < support.rooms().size(); r++) {
            int room = r;
            long most = (long) support.rooms().get(r).span().max() * groups;
            if (taken.size() < most && taken.stream().allMatch(side -> side.room() == room)) {
                for (Item item : larder.items(support.rooms().get(r).of())) {
                    if (item.taking() != null) {
                        offer(draft, item, 0, support.index(), parent -> beside(parent, support.index(), room, item));
                    }
                }
            }
        }
    }

    private static int count(Draft draft, Selector of) {
        int count = 0;
        for (Troop troop : draft.troops()) {
            count += of.takes(troop.of().index()) ? 1 : 0;
            count += (int) troop.fills().stream().flatMap(fill -> fill.units().stream())
                    .filter(one -> of.takes(one.unit().index())).count();
        }
        return count + (int) draft.sides().stream().filter(one -> of.takes(one.taking().unit().index())).count();
    }

    private void top(Draft draft, long owed, FormationView formation) {
        Item item = larder.formation(formation);
        offer(draft, item, owed, -1, parent -> placed(parent, -1, -1, -1, item));
    }

    private void offer(Draft draft, Item item, long owed, int support, Bucket.Step step) {
        long then = item.taking() == null ? least((FormationView) item.choice()) : item.points();
        if (draft.load().points() + owed + then > limit) {
            return;
        }
        Load cheap = load(draft, item, support, draft.load().money());
        for (int c = 0; c < cuts.size(); c++) {
            if (cuts.get(c).broken(cheap.sums(), 2 * c)) {
                return;
            }
        }
        Bucket bucket = bucket(cheap.points());
        if (bucket.takes(cheap.signature(), score(cheap))) {
            Load load = paid(draft, item, cheap);
            long score = score(load);
            if (bucket.takes(load.signature(), score)) {
                bucket.offer(draft, step, load.signature(), score);
            }
        }
    }

    /** With what it costs then; that is reckoned only for what would be looked at if it cost nothing. */
    private Load paid(Draft draft, Item item, Load load) {
        if (item.slots().length == 0) {
            return load;
        }
        long money = larder.money(larder.plus(draft.have(), item));
        weight = Math.max(weight, Math.min(money - load.money(), 10 * LEAST_WEIGHT));
        must = Math.max(must, Math.min(2 * (money - load.money()), Guide.NEVER / 2));
        return new Load(load.points(), money, load.traits(), load.signature(), load.sums());
    }

    private Load load(Draft draft, Item item, int support) {
        return paid(draft, item, load(draft, item, support, draft.load().money()));
    }

    private Load load(Draft draft, Item item, int support, long money) {
        Load load = draft.load();
        long[] sums = load.sums().clone();
        for (int c = 0; c < cuts.size(); c++) {
            cuts.get(c).add(item.choice(), item.points(), support, sums, 2 * c);
        }
        long mixed = item.taking() != null ? 0 : (item.choice().index() + 1) * 0x9E3779B97F4A7C15L;
        return new Load(load.points() + item.points(), money, load.traits() | item.traits(),
                load.signature() + (mixed ^ mixed >>> 29), sums);
    }

    private Draft placed(Draft draft, int t, int billet, int room, Item item) {
        List<Troop> troops = new ArrayList<>(draft.troops());
        if (t >= 0) {
            troops.set(t, troops.get(t).plus(billet, room, item.taking()));
        }
        if (item.taking() == null) {
            troops.add(Troop.empty((FormationView) item.choice(), t));
        }
        return new Draft(List.copyOf(troops), draft.sides(), load(draft, item, -1), larder.plus(draft.have(), item));
    }

    private Draft beside(Draft draft, int support, int room, Item item) {
        List<Side> sides = new ArrayList<>(draft.sides());
        sides.add(new Side(support, room, item.taking()));
        return new Draft(draft.troops(), List.copyOf(sides), load(draft, item, support), larder.plus(draft.have(), item));
    }

    /** A draft of another stage, counted anew as things stand here. */
    private Draft counted(Draft draft) {
        Draft anew = new Draft(draft.troops(), draft.sides(), new Load(0, 0, 0, 0, new long[2 * cuts.size()]), new int[0]);
        for (Troop troop : draft.troops()) {
            anew = weighed(anew, larder.formation(troop.of()), -1);
            for (Troop.Fill fill : troop.fills()) {
                for (Taking taking : fill.units()) {
                    anew = weighed(anew, larder.item(taking), -1);
                }
            }
        }
        for (Side side : draft.sides()) {
            anew = weighed(anew, larder.item(side.taking()), side.support());
        }
        return anew;
    }

    private Draft weighed(Draft draft, Item item, int support) {
        return new Draft(draft.troops(), draft.sides(), load(draft, item, support), larder.plus(draft.have(), item));
    }
}
