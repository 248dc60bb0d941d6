package org.cantonment.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.eclipse.xtext.linking.lazy.LazyLinkingResource;

/** One letter typed in a list of 1,000 lines, to all findings; beside parsing and linking the same text, bare. */
final class Keystroke {
    private static final int WARM = 300;
    private static final int RUNS = 400;
    private static final int LINES = 1_000;

    private Keystroke() {
    }

    static List<Row> run(Path folder) throws IOException {
        Texts.write(folder, 1, LINES);
        Path file = folder.resolve("lists/list-0000.list");
        Bare bare = new Bare();
        bare.load(folder.resolve("works.range"));
        bare.load(folder.resolve("great.rules"));
        LazyLinkingResource resource = bare.load(file);
        CampaignDesk desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
        String text = Files.readString(file);
        int at = text.indexOf(" of 5", text.length() / 2) + " of ".length();
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        for (int i = 0; i < WARM + RUNS; i++) {
            String typed = text.substring(0, at) + (i % 2 == 0 ? "3" : "5") + text.substring(at + 1);
            long begin = System.nanoTime();
            desk.update(file, typed, CancelToken.NEVER);
            long middle = System.nanoTime();
            Bare.reparse(resource, typed);
            long end = System.nanoTime();
            if (i >= WARM) {
                ours.add(middle - begin);
                reference.add(end - middle);
            }
        }
        String what = "one letter typed in a list of 1,000 lines, ";
        return List.of(Row.at(0.5, what + "median, ms", ours, reference),
                Row.at(0.95, what + "95 of 100, ms", ours, reference));
    }
}
