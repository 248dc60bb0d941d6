package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Support;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.SupportView;

/** Makes a ruling: the rules of some books as they stand at one time. */
public final class RulingCompiler {

    private RulingCompiler() {
    }

    /**
     * Puts books together for one time. A book whose own time does not cover the occasion is left out; names that none
     * of the books carries mean nobody. Never fails on rules that contradict themselves: that is among the ruling's
     * findings.
     *
     * @param books a published rule set and its layers, in any order as long as that order is always the same
     * @param occasion the era, round, week and day, so far as they are known
     */
    public static Ruling compile(List<RuleSet> books, Occasion occasion) {
        EraTree eras = new EraTree(books);
        BookOrder order = new BookOrder(books, occasion, eras);
        List<Finding> findings = new ArrayList<>();
        Picker picker = new Picker(order, findings);
        Names names = new Names(order.books());
        books.forEach(book -> book.eras().forEach(era -> names.title(era.id(), era.title())));
        Cards cards = new Cards(order, occasion, eras);
        Withdrawals withdrawals = new Withdrawals(order, eras, occasion);
        Permissions permissions = new Permissions(occasion, eras, withdrawals, order, names);
        ChoiceMaker maker = new ChoiceMaker(names, picker, permissions);

        announce(cards, maker, names);
        Surcharges surcharges = new Surcharges(cards, order, picker, names, findings);
        maker.surcharges(surcharges);
        List<Choice> choices = choices(cards, maker);
        Map<Id, Choice> byId = new HashMap<>();
        choices.forEach(choice -> byId.put(choice.id(), choice));
        LimitMaker limitMaker = new LimitMaker(order, names, picker, new BoundStack(order, picker, names, findings),
                findings);
        List<LimitView> limits = new ArrayList<>();
        for (Card card : cards.limits()) {
            if (!withdrawals.lifts(card.id())) {
                limits.add(limitMaker.limit(card));
            }
        }
        List<SupportView> supports = new ArrayList<>();
        for (Card card : cards.supports()) {
            supports.add(support(card, supports.size(), maker, permissions, names));
            LimitView onSupport = limitMaker.limit(card);
            if (!onSupport.lines().isEmpty()) {
                limits.add(onSupport);
            }
        }
        List<Finding> sorted = new ArrayList<>(new LinkedHashSet<>(findings));
        sorted.sort(null);
        return new Ruling(occasion, eras, choices, byId, supports, limits, names.titles(), sorted, surcharges.turn());
    }

    private static void announce(Cards cards, ChoiceMaker maker, Names names) {
        int index = 0;
        for (Card card : cards.units()) {
            maker.announce(card, index++, false);
        }
        for (Card card : cards.formations()) {
            maker.announce(card, index++, true);
        }
        int support = 0;
        for (Card card : cards.supports()) {
            names.enterSupport(card.id(), support++);
        }
    }

    private static List<Choice> choices(Cards cards, ChoiceMaker maker) {
        List<Choice> choices = new ArrayList<>();
        for (Card card : cards.units()) {
            choices.add(maker.unit(card, choices.size()));
        }
        for (Card card : cards.formations()) {
            choices.add(maker.formation(card, choices.size()));
        }
        return choices;
    }

    private static SupportView support(Card card, int index, ChoiceMaker maker, Permissions permissions, Names names) {
        Support support = (Support) card.ruled();
        var permission = permissions.of(card);
        if (permission.allowed()) {
            permission = permissions.of(support.id(), support.when());
        }
        return new SupportView(support.id(), names.title(support.id()), index, maker.rooms(support.places()),
                support.perCount(), names.selector(support.per()), permission, support.id());
    }
}
