package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Ruling;

/** One list in every era of its rule set: the verdict, and where it is not legal the least change that makes it so. */
public final class EraVerdicts {

    private EraVerdicts() {
    }

    /**
     * Judges a list in every era that is asked about, and searches for the least changes. The answers stand in the order
     * of the eras.
     *
     * @param written the rules that the list was written under: what is taken out moves its points under these
     * @param most how many lists each search may look at, at least 1; {@link LeastChange#MOST} is plenty
     * @param progress told at every era; steps are eras
     * @throws org.cantonment.domain.common.Cancelled if a situation's token says so
     */
    public static List<EraVerdict> of(ForceList list, Ruling written, List<EraCase> eras, int most, Progress progress) {
        List<EraVerdict> verdicts = new ArrayList<>(eras.size());
        for (EraCase era : eras) {
            progress.at(verdicts.size(), eras.size(), era.ruling().title(era.era()));
            verdicts.add(of(list, written, era, most));
        }
        progress.at(eras.size(), eras.size(), "");
        return List.copyOf(verdicts);
    }

    private static EraVerdict of(ForceList list, Ruling written, EraCase era, int most) {
        Verdict verdict = Judge.judge(era.ruling(), list, era.situation());
        Optional<Found> atLarge = verdict.legal() ? Optional.empty()
                : Optional.of(search(list, written, era, Fielding.ALL, most));
        Optional<Found> owned = era.owned().filter(fielding -> !verdict.legal() || !fielded(list, era, fielding))
                .map(fielding -> search(list, written, era, fielding, most));
        return new EraVerdict(era.era(), verdict, atLarge, owned);
    }

    private static boolean fielded(ForceList list, EraCase era, Fielding fielding) {
        Map<Id, Ruling> contingents = era.situation().contingents();
        return fielding.lacking(Requirements.of(era.ruling(), list, contingents)).isEmpty();
    }

    private static Found search(ForceList list, Ruling written, EraCase era, Fielding fielding, int most) {
        return LeastChange.search(era.ruling(), written, list, era.situation(), fielding, 1, most);
    }
}
