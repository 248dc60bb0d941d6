package org.cantonment.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.apache.log4j.Level;
import org.apache.log4j.LogManager;

/** Runs the benchmarks; started by {@code releng/bench}. */
public final class Bench {
    private static final List<String> ALL = List.of("keystroke", "folder", "rules", "checks", "visitors", "change",
            "turnout", "reach", "buying", "cold");

    private Bench() {
    }

    /**
     * Prints a table, and writes it as JSON if it is told where.
     *
     * @param args {@code --json FILE} and the names of measures, all of them if there are none
     */
    public static void main(String[] args) throws IOException {
        LogManager.getLoggerRepository().setThreshold(Level.OFF);
        if (args.length == 2 && args[0].startsWith("folder-")) {
            Path folder = Path.of(args[1]);
            System.out.println(args[0].equals("folder-ours") ? Folder.ours(folder) : Folder.bare(folder));
            return;
        }
        if (args.length == 1 && args[0].equals("buying-heap")) {
            System.out.println(BuyingLimits.heap());
            return;
        }
        List<String> wanted = new ArrayList<>(List.of(args));
        Path json = null;
        int at = wanted.indexOf("--json");
        if (at >= 0) {
            json = Path.of(wanted.get(at + 1));
            wanted.subList(at, at + 2).clear();
        }
        List<Row> rows = run(wanted.isEmpty() ? ALL : wanted);
        if (json != null) {
            Files.writeString(json, rows.stream().map(Row::json).collect(Collectors.joining(",\n  ", "[\n  ", "\n]\n")));
        }
    }

    private static List<Row> run(List<String> measures) throws IOException {
        List<Row> rows = new ArrayList<>();
        System.out.printf("%-62s %10s %10s %6s%n", "measure", "ours", "reference", "ratio");
        for (String measure : measures) {
            Path folder = Files.createTempDirectory("cantonment-bench");
            try {
                List<Row> some = one(measure, folder);
                some.forEach(row -> System.out.println(row.line()));
                rows.addAll(some);
            } finally {
                delete(folder);
            }
        }
        return rows;
    }

    private static List<Row> one(String measure, Path folder) throws IOException {
        return switch (measure) {
            case "keystroke" -> Keystroke.run(folder);
            case "folder" -> Folder.run(folder);
            case "rules" -> RuleEdit.run(folder);
            case "checks" -> Checks.run();
            case "visitors" -> Visitors.run(folder);
            case "change" -> Change.run();
            case "turnout" -> Turnouts.run();
            case "reach" -> Reaches.run();
            case "buying" -> Buying.run();
            case "cold" -> Cold.run(folder, Path.of(System.getProperty("cantonment.product")),
                    Path.of(System.getProperty("cantonment.nothing")), Path.of(System.getProperty("cantonment.list")));
            default -> throw new IllegalArgumentException("There is no measure '" + measure + "'; there are " + ALL);
        };
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
