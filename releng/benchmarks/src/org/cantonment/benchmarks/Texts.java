package org.cantonment.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/** Generated books, the same ones every time: a range, a rule set with many checks, and lists. */
final class Texts {
    static final int PIECES = 5_000;
    static final int UNITS = 500;
    static final int KINDS = 20;
    static final int FORMATIONS = 10;
    static final int LIMITS = 60;

    private Texts() {
    }

    /** A range of 5,000 entries. */
    static String range() {
        StringBuilder text = new StringBuilder("range Works \"Great Works\" in EUR\n");
        for (int f = 0; f < 50; f++) {
            text.append("family Family-").append(f).append(" \"Family ").append(f).append("\"\n");
        }
        for (int p = 0; p < PIECES - 50; p++) {
            text.append("piece Piece-").append(p).append(" \"Piece ").append(p).append("\" in Family-").append(p % 50)
                    .append('\n');
        }
        return text.toString();
    }

    /** A rule set of 500 units in three eras, with 60 limits of five forms. */
    static String rules() {
        Random random = new Random(20310303);
        StringBuilder text = new StringBuilder("rules Great-Book \"The Great Book\"\n"
                + "era First\nera Second after First\nera Third after Second\n");
        for (int k = 0; k < KINDS; k++) {
            text.append("kind Kind-").append(k).append('\n');
        }
        for (int u = 0; u < UNITS; u++) {
            unit(text, u, random);
        }
        for (int f = 0; f < FORMATIONS; f++) {
            text.append("formation Formation-").append(f).append(" \"Formation ").append(f).append("\"\n")
                    .append("  . billet Command 1 of Kind-0\n")
                    .append("  . billet Line 2 to 60 of Kind-").append(1 + f).append(", Kind-").append(2 + f).append('\n')
                    .append("  . billet Scouts 0 to 30 of Kind-").append(3 + f).append('\n');
        }
        for (int l = 0; l < LIMITS; l++) {
            limit(text, l);
        }
        return text.toString();
    }

    private static void unit(StringBuilder text, int u, Random random) {
        int points = 10 + random.nextInt(40);
        text.append("unit Unit-").append(u).append(" \"Unit ").append(u).append("\"\n")
                .append("  . is Kind-").append(u % KINDS).append('\n')
                .append("  . strength 3 for ").append(points).append(" points\n")
                .append("  . strength 5 for ").append(points * 5 / 3).append(" points\n")
                .append("  . strength 3 for ").append(points + 3).append(" points from Third\n")
                .append("  . each needs Piece-").append(random.nextInt(PIECES - 50)).append(" or Piece-")
                .append(random.nextInt(PIECES - 50)).append('\n')
                .append("  . option Extra \"Extra\", at most 2, for 2 points each\n");
    }

    private static void limit(StringBuilder text, int l) {
        text.append("limit Limit-").append(l).append('\n');
        int kind = l % KINDS;
        switch (l % 5) {
            case 0 -> text.append("  . at most ").append(400 + l).append(" of Kind-").append(kind).append('\n');
            case 1 -> text.append("  . at most ").append(60 + l % 30).append(" percent of the limit on Kind-").append(kind)
                    .append('\n');
            case 2 -> text.append("  . at most ").append(300 + l).append(" of Unit-").append(l).append(" per 1 of Formation-")
                    .append(l % FORMATIONS).append('\n');
            case 3 -> text.append("  . taking Unit-").append(l).append(" needs 1 of Kind-").append((kind + 1) % KINDS)
                    .append('\n');
            default -> text.append("  . at most 95 percent of points used on Kind-").append(kind).append(" in Second\n");
        }
    }

    /**
     * A list.
     *
     * @param number which one; lists of different numbers differ
     * @param lines  about how many lines
     */
    static String list(int number, int lines) {
        Random random = new Random(number);
        StringBuilder text = new StringBuilder("list L").append(number)
                .append(" under Great-Book in Second to 100000 points\n");
        int written = 1;
        int formation = number;
        while (written < lines) {
            int f = formation++ % FORMATIONS;
            text.append("Formation-").append(f).append(" as Group-").append(written).append('\n')
                    .append("  . Unit-").append(KINDS * random.nextInt(UNITS / KINDS)).append('\n');
            written += 2;
            for (int i = 0; i < 48 && written < lines; i++, written++) {
                int kind = 1 + f + random.nextInt(3);
                text.append("  . Unit-").append(kind + KINDS * random.nextInt(UNITS / KINDS))
                        .append(random.nextBoolean() ? " of 5" : "").append(random.nextInt(3) == 0 ? ", 2 Extra" : "")
                        .append(random.nextInt(4) == 0 ? " \"Line " + written + "\"" : "").append('\n');
            }
        }
        return text.toString();
    }

    /**
     * Writes a folder of books.
     *
     * @param folder an empty folder
     * @param lists  how many lists
     * @param lines  how many lines each has, about
     */
    static void write(Path folder, int lists, int lines) throws IOException {
        Files.writeString(folder.resolve("works.range"), range());
        Files.writeString(folder.resolve("great.rules"), rules());
        Path below = Files.createDirectories(folder.resolve("lists"));
        for (int i = 0; i < lists; i++) {
            Files.writeString(below.resolve(String.format("list-%04d.list", i)), list(i, lines));
        }
    }
}
