package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.session.Gap;
import org.cantonment.stock.session.Lent;

/** An evening in words: for a terminal, and short enough for a chat. */
public final class EveningText {
    private final EveningAnswer answer;
    private final List<String> closing;

    /**
     * Of an answer.
     *
     * @param closing whole sentences: what to buy at least cost where something is short
     */
    public EveningText(EveningAnswer answer, List<String> closing) {
        this.answer = answer;
        this.closing = List.copyOf(closing);
    }

    /** "Tuesday of round 5: all 4 lists can be played; lent by 2." */
    public String heading() {
        int lenders = answer.evening().lenders().size();
        String lent = lenders == 0 ? "nobody need lend anything" : lenders == 1 ? "one lends" : lenders + " lend";
        String lists = answer.lists().size() == 1 ? "the one list" : "all " + answer.lists().size() + " lists";
        return answer.session() + " of round " + answer.round() + ": " + (answer.evening().lacking() == 0
                ? lists + " can be played, " : answer.evening().lacking()
                        + (answer.evening().lacking() == 1 ? " piece is short, " : " pieces are short, ")) + lent + '.';
    }

    /** All of it, a line for each thing. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        answer.promised().forEach(promise -> lines.add("  " + promise));
        loans().forEach(loan -> lines.add("  " + loan));
        gaps().forEach(gap -> lines.add("Short: " + gap));
        lines.addAll(closing);
        if (!answer.evening().fewest()) {
            lines.add("So few lenders were found; that fewer would not do is not proven.");
        }
        if (!answer.evening().proven() && answer.evening().lacking() > 0) {
            lines.add("The best that was found.");
        }
        answer.missing().forEach(who -> lines.add("Left out: " + who + "."));
        answer.lists().forEach(list -> lines.add("  " + new TurnoutText(list).heading()));
        return lines;
    }

    /** "Ombra lends 1 Tread wagon to Brack.", one for each pair. */
    public List<String> loans() {
        return answer.evening().loans().stream().collect(Collectors.groupingBy(lent -> List.of(lent.from(), lent.to()),
                LinkedHashMap::new, Collectors.toList())).values().stream().map(this::loans).toList();
    }

    private String loans(List<Lent> pair) {
        return answer.who(pair.get(0).from()) + (answer.shared().containsKey(pair.get(0).from()) ? " lend " : " lends ") + pair.stream().map(lent -> lent.count() + " "
                + answer.catalogue().title(lent.type())).collect(Collectors.joining(", ")) + " to "
                + answer.who(pair.get(0).to()) + '.';
    }

    /** Why pieces are short: who needs what together, and all there is for it. */
    public List<String> gaps() {
        return answer.evening().gaps().stream().map(this::gap).toList();
    }

    private String gap(Gap gap) {
        Set<String> wanted = new LinkedHashSet<>();
        gap.needs().values().stream().flatMap(List::stream).map(Requirement::anyOf).forEach(any -> any.forEach(type ->
                wanted.add(answer.catalogue().title(type))));
        String who = and(gap.needs().keySet().stream().map(answer::who).toList());
        String from = gap.from().entrySet().stream().map(this::counted).collect(Collectors.joining(", "));
        String need = who + (gap.needs().size() == 1 ? " needs " : " together need ") + gap.needed() + " of "
                + String.join(" or ", wanted);
        if (gap.oneMeaning()) {
            return need + "; " + gap.there() + " can stand" + (from.isEmpty() ? "" : ": " + from) + ", for what stands for itself"
                    + " at a table stands for nothing else there. Short by " + gap.lacking() + ".";
        }
        return need + "; all that may stand for " + (gap.needs().size() == 1 ? "it" : "them")
                + ", whoever has it, is " + gap.there() + (from.isEmpty() ? "" : ": " + from) + ". Short by " + gap.lacking() + ".";
    }

    private String counted(Map.Entry<Id, Integer> one) {
        return one.getValue() + " " + answer.catalogue().title(one.getKey());
    }

    private static String and(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** The answer for a chat. */
    public String reply() {
        StringBuilder text = new StringBuilder(heading());
        List<String> more = new ArrayList<>(loans());
        more.addAll(gaps());
        more.addAll(closing);
        for (String line : more) {
            if (text.length() + line.length() + 1 < TurnoutText.REPLY) {
                text.append(' ').append(line);
            }
        }
        return text.toString();
    }
}
