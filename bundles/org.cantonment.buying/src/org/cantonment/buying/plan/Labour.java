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

    Labour(Question question, Shares shares) {
        this.question = question;
        times = new BuildTimes(question.market().catalogue(), shares);
        Supply shelf = shares.shelves(question.shelves());
        shelf.frames().stream().filter(one -> one.built() >= 0).forEach(one -> ready.merge(build(one), one.count(), Integer::sum));
    }

    private static Id build(Frames frames) {
        return frames.ways().get(frames.built()).build();
    }

    /**
     * The work of all builds.
     *
     * @param chosen the work of those that a choice was made for
     * @param plain the builds of all others; what stands already is no work
     * @throws IllegalStateException if a stage has no time for it
     */
    List<Work> with(List<Work> chosen, List<Building> plain) {
        List<Work> all = new ArrayList<>();
        for (int s = 0; s < chosen.size(); s++) {
            Work work = chosen.get(s);
            for (Building one : plain) {
                if (one.stage() == s && times.built(one.part(), one.build())) {
                    int stands = Math.min(one.count(), ready.getOrDefault(one.build(), 0));
                    ready.merge(one.build(), -stands, Integer::sum);
                    work = work.plus(work(one, one.count() - stands));
                }
            }
            check(s, work);
            all.add(work);
        }
        return all;
    }

    private Work work(Building one, int count) {
        OptionalInt minutes = times.minutes(one.part(), one.build());
        return count == 0 ? Work.NONE : new Work((long) count * minutes.orElse(0), count,
                minutes.isPresent() ? Map.of() : Map.of(one.part(), count));
    }

    private void check(int stage, Work work) {
        question.stages().get(stage).bench().filter(bench -> bench.of(work) > bench.most()).ifPresent(bench -> {
            throw new IllegalStateException("The plan is " + bench.of(work) + " " + bench.measure() + " of " + bench.most()
                    + " at the bench of stage " + stage);
        });
    }
}
