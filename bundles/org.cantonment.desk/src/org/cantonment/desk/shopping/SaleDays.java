package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Moment;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Box;
import org.cantonment.stock.supply.Supply;

/** When boxes are sold that cannot be had on the day that is asked about. */
final class SaleDays {
    private final Shops shops;

    SaleDays(Shops shops) {
        this.shops = shops;
    }

    /** "Paddle ram (G-33) is sold from 2032-02-01.", for each box without a price that holds any of these. */
    List<String> of(Set<Id> types) {
        List<String> told = new ArrayList<>();
        shops.market().unpriced().forEach((id, load) -> {
            Optional<Box> box = shops.market().catalogue().box(id);
            if (box.isPresent() && holds(load, types)) {
                Set<String> spans = new TreeSet<>();
                Stream.concat(box.get().sold().stream(), box.get().prices().stream().map(price -> price.when()))
                        .map(SaleDays::span).filter(span -> !span.isEmpty()).forEach(spans::add);
                if (!spans.isEmpty()) {
                    told.add(box.get().title() + (box.get().title().equals(id.name()) ? "" : " (" + id.name() + ")") + " is sold "
                            + String.join(", ", spans) + ".");
                }
            }
        });
        return told;
    }

    private static boolean holds(Supply load, Set<Id> types) {
        return load.stacks().stream().anyMatch(stack -> types.contains(stack.what())) || load.frames().stream()
                .anyMatch(frames -> frames.ways().stream().anyMatch(way -> way.gives().keySet().stream().anyMatch(types::contains)));
    }

    private static String span(Validity when) {
        return when.conditions().stream().filter(Reach.class::isInstance).map(Reach.class::cast).map(reach ->
                (day("from ", reach.from()) + " " + day("to ", reach.to())).strip()).filter(text -> !text.isEmpty())
                .findFirst().orElse("");
    }

    private static String day(String word, Optional<Moment> moment) {
        return moment.filter(OnDate.class::isInstance).map(one -> word + ((OnDate) one).date()).orElse("");
    }
}
