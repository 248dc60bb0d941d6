package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.cantonment.buying.worth.Worth;
import org.cantonment.buying.worth.Worth.ToPlayer;
import org.cantonment.desk.turnout.Row;
import org.joda.money.Money;

/** What a box is worth, as rows of the same table as what to buy: three figures, each opened into its parts. */
public final class WorthRows {
    private WorthRows() {
    }

    /** One row for the box, which opens into the figures. */
    public static List<Row> of(WorthAnswer answer) {
        WorthText text = new WorthText(answer);
        Worth worth = answer.worth();
        if (worth.price().isEmpty()) {
            return List.of(new Row(List.of("Worth of " + worth.title(), "", text.heading()), true, List.of()));
        }
        List<Row> figures = new ArrayList<>();
        figures.add(figure("The same pieces singly", worth.singles().map(plan -> plan.total()), text.singly()));
        worth.saving().ifPresent(saving -> figures.add(Row.of("Saving against them", Cash.text(saving),
                "It " + Cash.saving(saving) + ".")));
        text.extras().ifPresent(extras -> figures.add(Row.of("Apart from the pieces", "", extras)));
        worth.player().ifPresent(player -> figures.add(figure("Saving to " + answer.shopper().orElseThrow().title(),
                player.saving(), Stream.concat(Stream.of(text.saving(player)), text.toPlayer(player).stream()).toList())));
        worth.player().flatMap(ToPlayer::dearer).filter(Money::isPositive).ifPresent(dearer -> figures.add(
                Row.of("Made to buy it", Cash.text(dearer), "So much dearer it is to be made to buy it.")));
        text.remarks().forEach(remark -> figures.add(Row.of("To know", "", remark)));
        return List.of(new Row(List.of("Worth of " + worth.title(), Cash.text(worth.price().get()), text.heading()), false,
                figures));
    }

    private static Row figure(String title, Optional<Money> figure, List<String> lines) {
        return new Row(List.of(title, figure.map(Cash::text).orElse("none"), lines.get(0).strip()), false,
                lines.stream().skip(1).map(line -> Row.of("", "", line.strip())).toList());
    }
}
