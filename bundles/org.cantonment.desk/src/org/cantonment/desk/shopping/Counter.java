package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.turnout.Row;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.range.Box;
import org.joda.money.Money;

/** What a window asks: what to buy for a player, and what a box is worth to him. */
public final class Counter {
    /**
     * What is asked for.
     *
     * @param budget what may be spent, as typed; blank for no end of money
     * @param next   how many plans to look for beyond the best
     * @param box    a box whose worth is asked for; empty for none
     * @param growth whether it is asked what to buy before which round; the budget is then what each round has
     */
    public record Wish(Errand errand, String budget, int next, Optional<Id> box, boolean growth) {
    }

    /**
     * An answer.
     *
     * @param heading what it is, in words
     * @param reply   the answer for a chat; empty if there is none
     * @param rows    with the columns of {@link BuyRows}
     * @param books   lists that were composed: their texts by the names of files that they may be written into
     */
    public record Look(String heading, String reply, List<Row> rows, Map<String, String> books) {
        public Look {
            rows = List.copyOf(rows);
            books = Collections.unmodifiableMap(new LinkedHashMap<>(books));
        }
    }

    /** Something to choose: what it is called, and the word for it. */
    public record Choice(String title, String word) {
    }

    private Counter() {
    }

    /**
     * Asks.
     *
     * @param files the name of a list's file; empty if it has none
     * @throws Unclear if something typed makes no sense, or there is nothing to buy or to field
     */
    public static Look of(Meanings meanings, Player player, Wish wish, Function<ForceList, String> files,
            CancelToken cancel, Progress progress) throws Unclear {
        Shops shops = Shops.of(meanings, Optional.of(player.id()), wish.errand());
        if (wish.growth()) {
            return growth(meanings, player, wish, shops, cancel, progress);
        }
        Shopper shopper = Shopper.of(meanings, player, wish.errand(), shops, files);
        Optional<Money> budget = wish.budget().isBlank() ? Optional.empty()
                : Optional.of(Cash.read(wish.budget(), shops.currency()));
        BuyAnswer buy = BuyAnswer.of(shopper, shops, budget, wish.next(), Optional.empty(), cancel, progress);
        BuyText text = new BuyText(buy);
        List<Row> rows = new ArrayList<>(BuyRows.of(buy));
        if (wish.box().isEmpty()) {
            return new Look(text.heading(), text.reply(), rows, Map.of());
        }
        WorthAnswer worth = WorthAnswer.of(wish.box().get(), shops, Optional.of(shopper), cancel, progress);
        rows.addAll(0, WorthRows.of(worth));
        return new Look(text.heading(), new WorthText(worth).reply(), rows, Map.of());
    }

    private static Look growth(Meanings meanings, Player player, Wish wish, Shops shops, CancelToken cancel, Progress progress)
            throws Unclear {
        Growing.Terms terms = new Growing.Terms(wish.errand().lists(), wish.budget().isBlank() ? List.of()
                : List.of(wish.budget()), false, false, Growing.Terms.HALF, Optional.empty());
        GrowAnswer answer = Growing.of(meanings, player, terms, shops, cancel, progress);
        GrowText text = new GrowText(answer);
        return new Look(text.heading(), text.reply(), GrowRows.of(answer), answer.books(player));
    }

    /** The lists of a player that can be chosen, earlier rounds first; the words are those of an errand. */
    public static List<Choice> lists(Meanings meanings, Player player) {
        return meanings.listsOf(player.id()).stream().filter(list -> list.round().isPresent())
                .map(list -> list.round().getAsInt()).distinct()
                .map(round -> new Choice("Round " + round, String.valueOf(round))).toList();
    }

    /** The bundles, then all other boxes; the words are their ids. */
    public static List<Choice> boxes(Meanings meanings) {
        List<Box> all = meanings.ranges().stream().flatMap(range -> range.boxes().stream()).toList();
        return Stream.concat(all.stream().filter(Box::bundle), all.stream().filter(box -> !box.bundle()))
                .map(box -> new Choice(box.title().equals(box.id().name()) ? box.title() : box.title() + " (" + box.id().name() + ")",
                        box.id().text()))
                .toList();
    }
}
