package org.cantonment.desk.tests.expressions;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.cantonment.notation.Notation;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Trials;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** A small rule book about a pond, some lines to try on it, and a list to judge by them. */
final class Pond {

    static final String BOOK = """
            range Quay
            family Wagons
            family Gun-Wagons in Wagons
            piece Gun-Wagon in Gun-Wagons
            piece Carrier in Wagons
            piece Officer
            """;
    static final String RULES = """
            rules Pond "The Pond Book"
            era Early
            era Late after Early
            kind Armour "Armour"
            kind Eyes "Eyes"
            item Bridge
            unit Tread "Tread troop"
              . is Armour
              . strength 3 for 24 points
              . strength 5 for 40 points
              . each needs Gun-Wagon or Carrier
              . needs Officer
              . option Guns "Long guns", at most 2, for 2 points each
              . option Mast for 1 point
            unit Crank "Crank troop"
              . is Armour
              . strength 4 for 20 points
              . each needs Gun-Wagon
              . becomes Tread from Late
            unit Bike "Bicycle post"
              . is Eyes
              . strength 1 to 4 for 3 points each
            formation Squad "Squad"
              . billet Line 0 to 20 of Armour, Eyes
            support Float 0 to 9 of Armour, Eyes
            """;

    private final Library library = Notation.get().newLibrary();
    private final List<Document> rules = new ArrayList<>();
    private Occasion occasion = Occasion.UNKNOWN;
    private Situation situation = Situation.BARE;
    private Document list;

    private Pond(String more) {
        library.put(Path.of("/desk/quay.range"), BOOK);
        rules.add(library.put(Path.of("/desk/pond.rules"), RULES + more));
    }

    /** The book with some more cards and lines at its end. */
    static Pond with(String more) {
        return new Pond(more);
    }

    /** The book with one limit that says these lines, parted by semicolons. */
    static Pond limit(String lines) {
        return with("limit Test \"Test\"\n" + dotted(lines));
    }

    static String dotted(String lines) {
        StringBuilder text = new StringBuilder();
        for (String line : lines.split(";")) {
            text.append("  . ").append(line.strip()).append('\n');
        }
        return text.toString();
    }

    Pond layer(String text) {
        rules.add(library.put(Path.of("/desk/layer" + rules.size() + ".rules"), text));
        return this;
    }

    /** The entries, parted by semicolons: "Squad; . 4 Tread of 3". */
    Pond list(String entries) {
        list = library.put(Path.of("/desk/a.list"), "list Dream under Pond\n" + entries.replaceAll("; *", "\n"));
        return this;
    }

    Pond before(String entries) {
        Document before = library.put(Path.of("/desk/b.list"), "list Before under Pond\n" + entries.replaceAll("; *", "\n"));
        library.linkAnew();
        situation = situation.withBefore(before.meaning(ForceList.class).orElseThrow());
        return this;
    }

    Pond in(String era, int round) {
        occasion = new Occasion(Optional.of(Id.of("Pond", era)), OptionalInt.of(round), OptionalInt.empty(), Optional.empty());
        return this;
    }

    Pond to(int points) {
        situation = situation.withPoints(points, Optional.empty());
        return this;
    }

    Pond situation(java.util.function.UnaryOperator<Situation> other) {
        situation = other.apply(situation);
        return this;
    }

    /** What is wrong in the rule books: where, and what. */
    List<String> bookFindings() {
        library.linkAnew();
        List<String> all = new ArrayList<>();
        int own = (int) RULES.lines().count();
        for (Document document : rules) {
            document.findings().forEach(finding -> all.add(place(document, finding.offset(), own) + ' ' + finding.code()
                    + ": " + finding.message()));
        }
        Ruling ruling = ruling();
        for (Finding finding : ruling.findings()) {
            for (Document document : rules) {
                if (document.places().containsKey(finding.at())) {
                    all.add(place(document, document.locate(finding).offset(), own) + ' ' + finding.code() + ": "
                            + finding.message());
                }
            }
        }
        return all;
    }

    /** Line and column; lines of the book itself are counted from the first that was added. */
    private String place(Document document, int offset, int own) {
        int line = document.lines().lineOf(offset) + 1 - (document == rules.get(0) ? own : 0);
        return line + ":" + (document.lines().columnOf(offset) + 1);
    }

    Ruling ruling() {
        library.linkAnew();
        return RulingCompiler.compile(rules.stream().map(book -> book.meaning(RuleSet.class).orElseThrow()).toList(),
                occasion);
    }

    /** The codes of what the examples of the book do not give. */
    List<String> played() {
        library.linkAnew();
        RuleSet book = rules.get(0).meaning(RuleSet.class).orElseThrow();
        return Trials.play(book, List.of(book), CancelToken.NEVER).stream().map(Finding::code).toList();
    }

    Verdict verdict() {
        Ruling ruling = ruling();
        return Judge.judge(ruling, list.meaning(ForceList.class).orElseThrow(), situation);
    }

    /** What is said of the list by limits that were tried: the line of the list, severity, code and sentence. */
    List<String> said() {
        List<String> all = new ArrayList<>();
        for (Finding finding : verdict().findings()) {
            int line = list.lines().lineOf(list.locate(finding).offset()) + 1;
            all.add(line + " " + finding.severity().name().toLowerCase(java.util.Locale.ROOT) + ' ' + finding.code() + ": "
                    + finding.message());
        }
        return all;
    }

    /** Whether the one line that was tried is so for the list; fails if anything else is said. */
    boolean so() {
        List<String> books = bookFindings();
        if (!books.isEmpty()) {
            throw new AssertionError(books);
        }
        List<String> said = said();
        if (said.size() > 1 || said.size() == 1 && !said.get(0).contains("always.fails")) {
            throw new AssertionError(said);
        }
        return said.isEmpty();
    }
}
