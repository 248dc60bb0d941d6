package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.buying.formulate.BuildTimes;
import org.cantonment.buying.formulate.Shares;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;

/** What builds are at the bench, and that there is time for them. */
final class Labour {

    private final Question question;
    private final Shares shares;
    private final BuildTimes times;
    /** What stands and can be rebuilt: between games by part, since any way will do, else by the line that says how. */
    private final Map<Id, Integer> ready = new TreeMap<>();
    private final List<Building> plain = new ArrayList<>();

    Labour(Question question, Shares shares) {
        this.question = question;
        this.shares = shares;
        times = new BuildTimes(question.market().catalogue(), shares);
        Supply shelf = shares.shelves(question.shelves());
        for (Frames one : shelf.frames()) {
            if (one.built() >= 0) {
                ready.merge(key(one.fixing(), one.part(), one.ways().get(one.built()).build()), one.count(), Integer::sum);
            }
        }
    }

    private Id key(Fixing fixing, Id part, Id build) {
        return fixing == Fixing.LOOSE_BETWEEN_GAMES ? shares.of(part, shares.person(build)) : build;
    }

    /** How many stand on the shelf that are built so and can be rebuilt. */
    int ready(Id build) {
        return ready.getOrDefault(build, 0);
    }

    /**
     * Takes in the builds that leave no choice.
     *
     * @param all those that were chosen, and they; in the order of stages
     * @return all of them, where those that stand on the shelf are not told as new
     */
    List<Building> plain(List<Building> chosen, List<Building> all) {
        List<Building> told = new ArrayList<>();
        for (Building one : all) {
            if (chosen.stream().anyMatch(other -> other == one)) {
                told.add(one);
                continue;
            }
            Id key = key(one.fixing(), one.part(), one.build());
            int stand = Math.min(one.count(), ready(key));
            ready.merge(key, -stand, Integer::sum);
            plain.add(one.only(one.count() - stand));
            told.add(plain.get(plain.size() - 1));
        }
        return told;
    }

    /**
     * The work of all builds.
     *
     * @param chosen the work of those that a choice was made for
     * @param alone for each target what is built for it of what comes loose between games
     * @throws IllegalStateException if a stage has no time for it
     */
    List<Work> with(List<Work> chosen, List<List<Building>> alone) {
        List<Work> all = new ArrayList<>();
        for (int s = 0; s < chosen.size(); s++) {
            Work work = chosen.get(s);
            for (Building one : plain) {
                work = one.stage() == s && times.built(one.part(), one.build()) ? work.plus(work(one)) : work;
            }
            work = question.benched() ? work : work.plus(first(alone, s));
            check(s, work);
            all.add(work);
        }
        return all;
    }

    private Work work(Building one) {
        return Work.of(one.part(), one.newly(), one.fixing() == Fixing.LOOSE_BETWEEN_GAMES ? times.longest(one.part())
                : times.minutes(one.part(), one.build()));
    }

    /** What is built for the first time for a stage's targets; from then on it is ready. */
    private Work first(List<List<Building>> alone, int stage) {
        Map<Id, Integer> most = new TreeMap<>();
        Map<Id, Id> parts = new TreeMap<>();
        for (List<Building> target : alone) {
            Map<Id, Integer> here = new TreeMap<>();
            for (Building one : target) {
                if (one.stage() == stage && times.built(one.part(), one.build())) {
                    Id key = shares.of(one.part(), one.person());
                    parts.put(key, one.part());
                    here.merge(key, one.count(), Integer::sum);
                }
            }
            here.forEach((key, count) -> most.merge(key, count, Math::max));
        }
        Work work = Work.NONE;
        for (Map.Entry<Id, Integer> one : most.entrySet()) {
            int fresh = Math.max(0, one.getValue() - ready(one.getKey()));
            ready.merge(one.getKey(), fresh, Integer::sum);
            Id part = parts.get(one.getKey());
            work = work.plus(Work.of(part, fresh, times.longest(part)));
        }
        return work;
    }

    private void check(int stage, Work work) {
        question.stages().get(stage).bench().filter(bench -> bench.of(work) > bench.most()).ifPresent(bench -> {
            throw new IllegalStateException("The plan is " + bench.of(work) + " " + bench.measure() + " of " + bench.most()
                    + " at the bench of stage " + stage);
        });
    }
}
