package org.cantonment.desk.tests;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Spoils books as hurried people, broken transfers and ill will do. The same number gives the same damage. */
final class Mutator {
    private static final String[] SIGNS = {"\"", "'", "\u201C", "\u201D", ",", ".", "..", ".....", ":", ";", "/", "\\", "#",
            "##", "-", "--", "(", ")", "[", "]", "{", "}", "<", ">", "&", "%", "$", "@", "!", "?", "*", "=", "|", "~",
            "\uE000", "\uE001", "\u20AC", "\u00BD"};
    private static final String[] NUMBERS = {"0", "-1", "2147483647", "2147483648", "-2147483649",
            "99999999999999999999999999", "1000001", "3.5", "24,50", "0.005", "1e9", "00012", "\u0663", "\uFF13", "\u00B2",
            "2031-02-30", "2031-13-01", "2031-1-5", "0000-00-00", "25:61", "20:00", "101 percent", "-5 percent"};
    private static final String[] ODD = {"\u0000", "\u0001", "\t", "\u000B", "\u000C", "\u001B[31m", "\u007F", "\u0085", "\u00A0",
            "\u00AD", "\u200B", "\u200F", "\u202E", "\u2028", "\u2029", "\uFEFF", "\uFFFD", "\uFFFF", "\uD83C\uDFB2",
            "\uD800", "\uDC00", "e\u0301", "\u05D3\u05D5\u05E8\u05D4", "\u0623\u062D\u0645\u062F",
            "\u041E\u043C\u0431\u0440\u0430", "\u6C34\u9E5F", "\u0391lpha"};
    private static final String[] WORDS = {"of", "for", "from", "to", "in", "on", "by", "per", "or", "after", "over", "as",
            "under", "unit", "list", "rules", "week", "box", "billet", "limit", "at most", "exactly", "Nobody",
            "Lake-Book", "Ombra", "EUR", "note \"x\"", "correct week 1", "gives nothing"};

    private final List<Map.Entry<String, String>> books;
    private final Random random;

    Mutator(Map<String, String> files, long number) {
        this.books = new ArrayList<>(files.entrySet());
        this.random = new Random(number);
    }

    /** Spoils one book in one way. */
    Mutation next() {
        Map.Entry<String, String> book = books.get(random.nextInt(books.size()));
        List<String> lines = new ArrayList<>(List.of(book.getValue().split("\n", -1)));
        int at = random.nextInt(Math.max(1, lines.size() - 1));
        BitSet touched = new BitSet();
        touched.set(at + 1);
        int way = random.nextInt(12);
        String what = switch (way) {
            case 0 -> cut(lines, at);
            case 1 -> halve(lines, at);
            case 2 -> swap(lines, at);
            case 3 -> insert(lines, at, SIGNS);
            case 4 -> insert(lines, at, NUMBERS);
            case 5 -> insert(lines, at, ODD);
            case 6 -> insert(lines, at, WORDS);
            case 7 -> drop(lines, at);
            case 8 -> twice(lines, at, touched);
            case 9 -> split(lines, at, touched);
            case 10 -> replaceWord(lines, at);
            default -> join(lines, touched);
        };
        return new Mutation(book.getKey(), String.join("\n", lines), touched,
                what + " at line " + (at + 1) + " of " + book.getKey());
    }

    private String cut(List<String> lines, int at) {
        String line = lines.get(at);
        lines.set(at, line.substring(0, random.nextInt(line.length() + 1)));
        return "cut";
    }

    private String halve(List<String> lines, int at) {
        String[] words = lines.get(at).split(" ", -1);
        int word = random.nextInt(words.length);
        words[word] = words[word].substring(0, words[word].length() / 2);
        lines.set(at, String.join(" ", words));
        return "half a word gone";
    }

    private String swap(List<String> lines, int at) {
        List<String> words = new ArrayList<>(List.of(lines.get(at).split(" ", -1)));
        Collections.swap(words, random.nextInt(words.size()), random.nextInt(words.size()));
        lines.set(at, String.join(" ", words));
        return "words swapped";
    }

    private String insert(List<String> lines, int at, String[] choice) {
        String line = lines.get(at);
        int place = random.nextInt(line.length() + 1);
        String what = choice[random.nextInt(choice.length)];
        lines.set(at, line.substring(0, place) + what + line.substring(place));
        return "put in '" + what + "'";
    }

    private String drop(List<String> lines, int at) {
        lines.remove(at);
        return "line gone";
    }

    private String twice(List<String> lines, int at, BitSet touched) {
        lines.add(at, lines.get(at));
        touched.set(at + 2);
        return "line twice";
    }

    private String split(List<String> lines, int at, BitSet touched) {
        String line = lines.get(at);
        int place = random.nextInt(line.length() + 1);
        lines.set(at, line.substring(0, place));
        lines.add(at + 1, line.substring(place));
        touched.set(at + 2);
        return "line broken in two";
    }

    private String replaceWord(List<String> lines, int at) {
        String[] words = lines.get(at).split(" ", -1);
        words[random.nextInt(words.length)] = WORDS[random.nextInt(WORDS.length)];
        lines.set(at, String.join(" ", words));
        return "word replaced";
    }

    private String join(List<String> lines, BitSet touched) {
        Map.Entry<String, String> other = books.get(random.nextInt(books.size()));
        int from = lines.size();
        lines.addAll(List.of(other.getValue().split("\n", -1)));
        touched.set(from, lines.size() + 1);
        return "joined with " + other.getKey();
    }
}
