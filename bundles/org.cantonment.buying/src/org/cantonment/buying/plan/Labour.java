package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.buying.formulate.BuildTimes;
import org.cantonment.buying.formulate.Shares;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;

/** What builds are at the bench, and that there is time for them. */
final class Labour {

    private final Question question;
    private final BuildTimes times;
    private final Map<Id, Integer> ready = new TreeMap<>();
    private final List<Building> plain = new ArrayList<>();

    Labour(Question question, Shares shares) {
        this.question = question;
        times = new BuildTimes(question.market().catalogue(), shares);
        Supply shelf = shares.shelves(question.shelves());
        shelf.frames().stream().filter(one -> one.built() >= 0).forEach(one -> ready.merge(build(one), one.count(), Integer::sum));
    }

    private static Id build(Frames frames) {
        return frames.ways().get(frames.built()).build();
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
            int stand = Math.min(one.count(), ready(one.build()));
            ready.merge(one.build(), -stand, Integer::sum);
            plain.add(one.only(one.count() - stand));
            told.add(plain.get(plain.size() - 1));
        }
        return told;
    }

    /**
     * The work of all builds.
     *
     * @param chosen the work of those that a choice was made for
     * @throws IllegalStateException if a stage has no time for it
     */
    List<Work> with(List<Work> chosen) {
        List<Work> all = new ArrayList<>();
        for (int s = 0; s < chosen.size(); s++) {
            Work work = chosen.get(s);
            for (Building one : plain) {
                work = one.stage() == s && times.built(one.part(), one.build()) ? work.plus(work(one)) : work;
            }
            check(s, work);
            all.add(work);
        }
        return all;
    }

    private Work work(Building one) {
        OptionalInt minutes = times.minutes(one.part(), one.build());
        return one.newly() == 0 ? Work.NONE : new Work((long) one.newly() * minutes.orElse(0), one.newly(),
                minutes.isPresent() ? Map.of() : Map.of(one.part(), one.newly()));
    }

    private void check(int stage, Work work) {
        question.stages().get(stage).bench().filter(bench -> bench.of(work) > bench.most()).ifPresent(bench -> {
            throw new IllegalStateException("The plan is " + bench.of(work) + " " + bench.measure() + " of " + bench.most()
                    + " at the bench of stage " + stage);
        });
    }
}
