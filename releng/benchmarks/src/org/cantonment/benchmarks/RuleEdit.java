package org.cantonment.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;

/** A rule set edited that 1,000 lists stand on, and all of them judged again; beside opening the whole folder anew. */
final class RuleEdit {
    private static final int LISTS = 1_000;
    private static final int LINES = 60;
    private static final int WARM = 3;
    private static final int RUNS = 7;

    private RuleEdit() {
    }

    static List<Row> run(Path folder) throws IOException {
        Texts.write(folder, LISTS, LINES);
        Path rules = folder.resolve("great.rules");
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        CampaignDesk desk = open(folder);
        for (int i = 0; i < WARM + RUNS; i++) {
            // Another limit for a kind that every list has, so that nothing may be kept.
            String text = Texts.rules().replace("at most 400 of Kind-0", "at most " + (i + 1) + " of Kind-0");
            int before = desk.judgements();
            long begin = System.nanoTime();
            desk.update(rules, text, CancelToken.NEVER);
            long edited = System.nanoTime();
            if (desk.judgements() - before != LISTS) {
                throw new IllegalStateException("Judged " + (desk.judgements() - before) + " lists, not " + LISTS);
            }
            open(folder);
            if (i >= WARM) {
                ours.add(edited - begin);
                reference.add(System.nanoTime() - edited);
            }
        }
        return List.of(Row.at(0.5, "a rule set edited, 1,000 lists judged again, median, ms", ours, reference));
    }

    private static CampaignDesk open(Path folder) {
        return CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
    }
}
