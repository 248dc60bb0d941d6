package org.cantonment.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.guest.Circumstances;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;

/** 500 checks of others asked about one list of 1,000 lines; beside calling the same checks with nobody looking on. */
final class Visitors {
    private static final int CHECKS = 500;
    private static final int LINES = 1_000;
    private static final int WARM = 200;
    private static final int RUNS = 101;

    private Visitors() {
    }

    /** Counts one unit in the list, and finds fault with an odd number. */
    private record Odd(String name, int unit) implements RuleCheck {
        private static final FindingKind KIND = new FindingKind("odd", Severity.NOTE, "An odd number of one unit.");

        @Override
        public String label() {
            return name;
        }

        @Override
        public String about() {
            return "Counts one unit.";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(Parameter.count("Of", "Of", "Of how many the number must be.").within(1, 9).presetTo(2));
        }

        @Override
        public List<FindingKind> findings() {
            return List.of(KIND);
        }

        @Override
        public List<Finding> check(Question question) {
            long count = 0;
            for (var one : question.counts().entrySet()) {
                if (one.getKey().text().length() % 7 == unit % 7) {
                    count += one.getValue();
                }
            }
            return count % question.count("Of") == 0 ? List.of()
                    : List.of(KIND.at(question.list().id(), "There are " + count + "."));
        }
    }

    static List<Row> run(Path folder) throws IOException {
        Circumstances about = about(folder);
        Guests guests = new Guests();
        List<Odd> checks = new ArrayList<>();
        for (int i = 0; i < CHECKS; i++) {
            checks.add(new Odd("Odd-" + i, i));
            guests.enter(checks.get(i), Origin.installed("benchmark", "1.0.0", 1));
        }
        Question bare = Question.about(about.list()).presets(checks.get(0)).ask();
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        for (int i = 0; i < WARM + RUNS; i++) {
            long begin = System.nanoTime();
            int found = guests.ask(about.campaign().checks(), about).stream().mapToInt(said -> said.findings().size()).sum();
            long asked = System.nanoTime();
            int called = 0;
            for (Odd check : checks) {
                called += check.check(bare).size();
            }
            long end = System.nanoTime();
            if (found != called) {
                throw new IllegalStateException("Found " + found + " and " + called);
            }
            if (i >= WARM) {
                ours.add(asked - begin);
                reference.add(end - asked);
            }
        }
        return List.of(Row.at(0.5, "500 checks of others on 1,000 lines, median, ms", ours, reference),
                Row.at(0.95, "500 checks of others on 1,000 lines, 95 percent, ms", ours, reference));
    }

    private static Circumstances about(Path folder) throws IOException {
        Texts.write(folder, 0, 0);
        StringBuilder campaign = new StringBuilder("campaign Season\nplays Great-Book\nplayer Ombra\nround 1\n  . era Second\n");
        for (int i = 0; i < CHECKS; i++) {
            campaign.append("check Odd-").append(i).append('\n');
        }
        Files.writeString(folder.resolve("season.campaign"), campaign);
        Path list = folder.resolve("ombra.list");
        Files.writeString(list, "list by Ombra round 1\n" + Texts.list(1, LINES).lines().skip(1)
                .reduce("", (text, line) -> text + line + '\n'));
        DeskSnapshot snapshot = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT).snapshot();
        Judged judged = snapshot.judged(list).orElseThrow();
        Campaign season = snapshot.meanings().campaigns().get(0);
        List<RuleSet> books = snapshot.meanings().ruleSets();
        return new Circumstances(season, judged.about().list(), books, judged.about().ruling().orElseThrow(),
                judged.about().situation(), judged.verdict().orElseThrow(), List.of(), List.of(), CancelToken.NEVER);
    }
}
