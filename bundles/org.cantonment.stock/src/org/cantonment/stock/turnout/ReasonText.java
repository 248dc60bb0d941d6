package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Reason.Block;
import org.cantonment.stock.turnout.Reason.Case;
import org.cantonment.stock.turnout.Reason.InFrames;
import org.cantonment.stock.turnout.Reason.OneMeaning;
import org.cantonment.stock.turnout.Reason.Portion;
import org.cantonment.stock.turnout.Reason.Searched;
import org.cantonment.stock.turnout.Reason.Source;

/** Says a reason in a sentence. */
public final class ReasonText {

    private final Function<Id, String> titles;

    private ReasonText(Function<Id, String> titles) {
        this.titles = titles;
    }

    /**
     * One or two complete sentences, as "Guns, Staff and Survey together need 9; all that may stand for them is 7: 4 Gun
     * wagon, 2 Long wagon and 1 Scout cart. Short by 2."
     *
     * @param titles what people call an entry, a piece type or a part
     */
    public static String of(Reason reason, Function<Id, String> titles) {
        return new ReasonText(titles).say(reason);
    }

    private String say(Reason reason) {
        if (reason instanceof Block block) {
            return block(block) + " Short by " + block.lacking() + ".";
        }
        if (reason instanceof InFrames frames) {
            List<String> portions = frames.portions().stream().map(this::portion).toList();
            return "Out of " + frames.frames() + " of " + titles.apply(frames.part()) + ", " + and(portions)
                    + ": that takes " + frames.framesNeeded() + ". Short by " + frames.lacking() + ".";
        }
        if (reason instanceof OneMeaning meaning) {
            List<String> cases = meaning.cases().stream().map(this::oneCase).toList();
            return "What stands for itself stands for nothing else: " + String.join("; ", cases) + ". Short by "
                    + meaning.lacking() + ".";
        }
        Searched searched = (Searched) reason;
        String all = entries(searched.needs());
        return searched.proven()
                ? "Every way to build and place the pieces for " + all + " was ruled out. Short by " + searched.lacking()
                        + "."
                : "For " + all + " the best found is short by " + searched.lacking() + "; no way is short by less than "
                        + searched.least() + ".";
    }

    private String block(Block block) {
        Set<Id> entries = entryIds(block.needs());
        String need = entries(block.needs()) + (entries.size() > 1 ? " together need " : " needs ") + block.needed();
        if (block.from().isEmpty()) {
            return need + " of " + wanted(block.needs()) + "; nothing there may stand for that.";
        }
        String perhaps = perhaps(block);
        return need + "; all that may stand for " + (entries.size() > 1 ? "them" : "it") + " is " + block.there() + ": "
                + and(block.from().stream().filter(source -> source.pieces() > 0).map(this::source).toList(), "nothing")
                + "." + perhaps;
    }

    private String wanted(List<Requirement> needs) {
        Set<String> names = new LinkedHashSet<>();
        needs.forEach(need -> need.anyOf().forEach(name -> names.add(titles.apply(name))));
        return String.join(" or ", names);
    }

    private String perhaps(Block block) {
        List<String> more = block.from().stream().filter(source -> source.perhaps() > 0)
                .map(source -> source.perhaps() + " " + titles.apply(source.what())).toList();
        return more.isEmpty() ? "" : " There may be up to " + and(more) + " more, which nobody has counted.";
    }

    private String source(Source source) {
        String what = titles.apply(source.what());
        return switch (source.kind()) {
            case PIECES -> source.pieces() + " " + what;
            case FRAMES -> source.pieces() + " out of " + source.frames() + " of " + what;
            case CAPPED -> source.pieces() + " that a box allows";
            case CONVERSION -> source.pieces() + " worked over";
            case SHARE -> source.pieces() + " that likeness allows to stand in";
        };
    }

    private String portion(Portion portion) {
        return portion.pieces() + " for " + entries(portion.needs()) + " take " + portion.frames() + " at " + portion.each()
                + " each";
    }

    private String oneCase(Case one) {
        List<String> meanings = new ArrayList<>();
        one.itself().forEach((type, itself) -> meanings.add(titles.apply(type)
                + (itself ? " as itself" : " as something else")));
        List<Requirement> needs = one.blocks().stream().flatMap(block -> block.needs().stream()).toList();
        return "with " + and(meanings) + ", " + entries(needs) + " lack " + one.lacking();
    }

    private static Set<Id> entryIds(List<Requirement> needs) {
        Set<Id> entries = new LinkedHashSet<>();
        needs.forEach(need -> entries.add(need.entry()));
        return entries;
    }

    private String entries(List<Requirement> needs) {
        return and(entryIds(needs).stream().map(titles).toList());
    }

    private static String and(List<String> words, String none) {
        return words.isEmpty() ? none : and(words);
    }

    private static String and(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
