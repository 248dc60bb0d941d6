package org.cantonment.references.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;

import org.cantonment.buying.plan.Bench;
import org.cantonment.buying.plan.Stage;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Price;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Errands for the bench, drawn from a seed. */
public final class BenchErrands {

    private final Random random;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Box> boxes = new ArrayList<>();

    private BenchErrands(long seed) {
        random = new Random(seed * 6133 + 29);
    }

    /** Up to three stages, parts of all three fixings, ways that take their own time or none that is known. */
    public static BenchErrand draw(long seed) {
        return new BenchErrands(seed).draw();
    }

    private BenchErrand draw() {
        for (int t = 0; t < 3 + random.nextInt(3); t++) {
            pieces.add(new Piece(id("T" + t), "", Optional.empty(), List.of()));
        }
        for (int k = 0; k < 1 + random.nextInt(3); k++) {
            part(k);
        }
        for (int b = 0; b < parts.size() + random.nextInt(3); b++) {
            box(b);
        }
        boolean money = random.nextInt(3) == 0;
        List<Stage> stages = new ArrayList<>();
        List<List<Requirement>> lists = new ArrayList<>();
        for (int s = 0; s < 2 + random.nextInt(2); s++) {
            stages.add(stage(money));
            lists.add(list(s));
        }
        return new BenchErrand(new Range(Id.of("Works"), "", Optional.of(CurrencyUnit.EUR), List.of(), pieces, parts,
                List.of(), List.of(), boxes, List.of(), List.of()), shelf(), lists, stages, random.nextBoolean());
    }

    private static Id id(String name) {
        return Id.of("Works", name);
    }

    private Id type() {
        return pieces.get(random.nextInt(pieces.size())).id();
    }

    private static Content some(int count, Id what) {
        return new Content(Certainty.KNOWN, count, what);
    }

    private OptionalInt minutes(int often) {
        return random.nextInt(often) == 0 ? OptionalInt.empty() : OptionalInt.of(5 * (1 + random.nextInt(40)));
    }

    private void part(int number) {
        Id part = id("Part-" + number);
        List<Build> builds = new ArrayList<>();
        for (int w = 0; w < 1 + random.nextInt(3); w++) {
            builds.add(new Build(part.line(w + 1), List.of(some(1 + random.nextInt(2), type())), List.of(),
                    random.nextInt(3) == 0 ? minutes(4) : OptionalInt.empty()));
        }
        Fixing fixing = Fixing.values()[Math.max(0, random.nextInt(5) - 2)];
        parts.add(new Part(part, "", fixing, builds, List.of(), minutes(8), List.of()));
    }

    private void box(int number) {
        Map<Id, Integer> inside = new TreeMap<>();
        if (number < parts.size()) {
            inside.put(parts.get(number).id(), 1 + random.nextInt(3));
        }
        if (number >= parts.size() || random.nextInt(3) == 0) {
            inside.merge(type(), 1 + random.nextInt(2), Integer::sum);
        }
        List<Content> contents = inside.entrySet().stream().map(one -> some(one.getValue(), one.getKey())).toList();
        boxes.add(new Box(id("B" + number), "", false, contents, List.of(), List.of(new Price(id("B" + number).line(1),
                Money.ofMinor(CurrencyUnit.EUR, 50 * (4 + random.nextInt(20))), Validity.ALWAYS)), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of()));
    }

    private Stage stage(boolean money) {
        Stage stage = money ? Stage.OPEN.with(Money.ofMinor(CurrencyUnit.EUR, 500 * (2 + random.nextInt(8)))) : Stage.OPEN;
        return switch (random.nextInt(6)) {
            case 0 -> stage;
            case 1 -> stage.with(new Bench(Measure.PARTS, random.nextInt(5)));
            default -> stage.with(new Bench(Measure.MINUTES, 15 * random.nextInt(36)));
        };
    }

    /** Mostly what can be built. */
    private List<Requirement> list(int stage) {
        List<Requirement> needs = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            Part part = parts.get(random.nextInt(parts.size()));
            Id type = random.nextInt(4) == 0 ? type()
                    : part.builds().get(random.nextInt(part.builds().size())).gives().get(0).what();
            needs.add(new Requirement(Id.of("List-" + stage).line(i + 1), 1 + random.nextInt(3),
                    random.nextInt(4) == 0 ? List.of(type, type()) : List.of(type)));
        }
        return needs;
    }

    private Supply shelf() {
        List<Stack> stacks = random.nextBoolean() ? List.of() : List.of(new Stack(type(), 1 + random.nextInt(2), 0, 0));
        List<Frames> frames = new ArrayList<>();
        for (Part part : parts) {
            if (random.nextInt(3) == 0) {
                List<Way> ways = part.builds().stream().map(build -> new Way(build.id(),
                        Map.of(build.gives().get(0).what(), build.gives().get(0).count()))).toList();
                boolean stands = part.fixing() != Fixing.GLUED && random.nextInt(3) > 0;
                frames.add(new Frames(part.id(), 1 + random.nextInt(2), false, ways, stands ? random.nextInt(ways.size()) : -1,
                        part.fixing()));
            }
        }
        return new Supply(stacks, frames, List.of(), List.of());
    }
}
