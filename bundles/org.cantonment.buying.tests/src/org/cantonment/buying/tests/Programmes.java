package org.cantonment.buying.tests;

import java.util.Random;

import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;

/** Programmes by seed. */
final class Programmes {

    private Programmes() {
    }

    /** Small enough to try all values: up to 6 columns of at most 3, rows of both kinds, costs of both signs. */
    static Programme small(long seed) {
        Random random = new Random(seed);
        ProgrammeMaker maker = new ProgrammeMaker();
        int n = 1 + random.nextInt(6);
        for (int j = 0; j < n; j++) {
            int lower = random.nextInt(4) == 0 ? random.nextInt(2) : 0;
            maker.column("c" + j, random.nextInt(8) == 0 ? -random.nextInt(5) : random.nextInt(12), lower,
                    lower + random.nextInt(4), random.nextInt(2));
        }
        int m = random.nextInt(6);
        for (int i = 0; i < m; i++) {
            Sum sum = new Sum();
            boolean mixed = random.nextInt(3) == 0;
            for (int j = 0; j < n; j++) {
                if (random.nextInt(3) > 0) {
                    sum.add(mixed ? random.nextInt(9) - 4 : 1 + random.nextInt(5), j);
                }
            }
            if (random.nextInt(4) == 0) {
                maker.atMost(sum, random.nextInt(14));
            } else {
                maker.atLeast(sum, random.nextInt(mixed ? 5 : 16));
            }
        }
        return maker.make();
    }

    /** Things that are bought and built from: what is built costs nothing, is held down by what is bought, and fills rows. */
    static Programme building(long seed) {
        Random random = new Random(seed);
        ProgrammeMaker maker = new ProgrammeMaker();
        int wares = 1 + random.nextInt(3);
        for (int w = 0; w < wares; w++) {
            maker.column("bought " + w, random.nextInt(6), 0, 1 + random.nextInt(3), 0);
        }
        int builds = 1 + random.nextInt(3);
        Sum[] needs = {new Sum(), new Sum()};
        for (int b = 0; b < builds; b++) {
            int column = maker.column("built " + b, 0, 0, 1 + random.nextInt(5), 1);
            Sum parts = new Sum().add(-1, column);
            for (int w = 0; w < wares; w++) {
                parts.add(random.nextInt(3), w);
            }
            maker.atLeast(parts, -random.nextInt(2));
            needs[random.nextInt(2)].add(1 + random.nextInt(3), column);
            needs[0].add(random.nextInt(2), column);
        }
        maker.atLeast(needs[0], random.nextInt(7));
        maker.atLeast(needs[1], random.nextInt(5));
        return maker.make();
    }

    /** Covering with weights, of the shape of the OR-Library's set covering problems: m rows, n columns, density in percent. */
    static Programme covering(int m, int n, int percent, int mostCost, long seed) {
        Random random = new Random(seed);
        ProgrammeMaker maker = new ProgrammeMaker();
        for (int j = 0; j < n; j++) {
            maker.column("c" + j, 1 + random.nextInt(mostCost), 0, 1, 0);
        }
        for (int i = 0; i < m; i++) {
            Sum sum = new Sum();
            int count = 0;
            for (int j = 0; j < n; j++) {
                if (random.nextInt(100) < percent) {
                    sum.add(1, j);
                    count++;
                }
            }
            for (; count < 2; count++) {
                sum.add(1, random.nextInt(n));
            }
            maker.atLeast(sum, 1);
        }
        return maker.make();
    }
}
