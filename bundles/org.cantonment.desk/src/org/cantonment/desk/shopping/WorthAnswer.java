package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.worth.Valuer;
import org.cantonment.buying.worth.Worth;
import org.cantonment.buying.worth.Worth.ExtraWorth;
import org.cantonment.buying.worth.Worth.ToPlayer;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Allowance;

/**
 * What a box is worth.
 *
 * @param shops      what can be had
 * @param shopper    whom it may save something; empty if nobody was asked about
 * @param withExtras what it saves him if he wants its extras, too, of those that are sold singly; empty if there are none,
 *                   or he asked for them himself
 * @param stopped    whether the search was ended before it was through; what was not proven by then is not sure
 */
public record WorthAnswer(Worth worth, Shops shops, Optional<Shopper> shopper, Optional<ToPlayer> withExtras,
        boolean stopped) {

    /** Asks. */
    public static WorthAnswer of(Id box, Shops shops, Optional<Shopper> shopper, CancelToken cancel, Progress progress) {
        Worth worth = value(box, shops, shopper.map(one -> one.question(shops)), cancel, progress);
        Optional<Question> more = worth.player().isEmpty() ? Optional.empty() : shopper.filter(one -> wantsNone(one, worth))
                .flatMap(one -> withExtras(one, shops, worth));
        return new WorthAnswer(worth, shops, shopper,
                more.flatMap(question -> value(box, shops, Optional.of(question), cancel, progress).player()),
                cancel.cancelled());
    }

    private static Worth value(Id box, Shops shops, Optional<Question> player, CancelToken cancel, Progress progress) {
        return Valuer.of(box, shops.ranges(), shops.market(), player, shops.currency(), cancel, progress);
    }

    private static boolean wantsNone(Shopper shopper, Worth worth) {
        return shopper.targets().stream().flatMap(target -> target.needs().stream()).noneMatch(need ->
                worth.extras().stream().anyMatch(extra -> need.anyOf().contains(extra.extra())));
    }

    private static Optional<Question> withExtras(Shopper shopper, Shops shops, Worth worth) {
        List<Requirement> needs = sold(worth).stream().map(extra ->
                new Requirement(worth.box(), extra.count(), List.of(extra.extra()))).toList();
        List<Target> targets = new ArrayList<>(shopper.targets());
        targets.add(Target.now(worth.box(), "Its extras", needs, Allowance.EXACT));
        return needs.isEmpty() ? Optional.empty() : Optional.of(shopper.question(shops).with(targets));
    }

    private static List<ExtraWorth> sold(Worth worth) {
        return worth.extras().stream().filter(ExtraWorth::sold).toList();
    }

    /** The extras that were asked about beside the lists. */
    List<ExtraWorth> extrasAsked() {
        return sold(worth);
    }

    /** Whether all figures that were asked for can be said. */
    public boolean complete() {
        return !stopped && worth.price().isPresent() && worth.saving().isPresent()
                && (shopper.isEmpty() || worth.player().flatMap(ToPlayer::saving).isPresent());
    }
}
