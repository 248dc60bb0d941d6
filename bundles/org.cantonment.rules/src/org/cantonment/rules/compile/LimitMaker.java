package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Before;
import org.cantonment.domain.rules.Keep;
import org.cantonment.domain.rules.Limit;
import org.cantonment.domain.rules.MendText;
import org.cantonment.domain.rules.Says;
import org.cantonment.domain.rules.Taking;
import org.cantonment.rules.view.BeforeView;
import org.cantonment.rules.view.KeepView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.TakingView;

/** Makes limits as they stand out of their cards, and out of bounds laid on a support. */
final class LimitMaker {

    private record TakingKey(List<Id> subjects, Object relation, List<Id> objects, Object scope) {
    }

    private final BookOrder order;
    private final Names names;
    private final Picker picker;
    private final BoundStack stack;
    private final AlwaysStack alwaysStack;
    private final List<Finding> findings;

    LimitMaker(BookOrder order, Names names, Picker picker, BoundStack stack, List<Finding> findings) {
        this.findings = findings;
        this.alwaysStack = new AlwaysStack(order, picker, findings);
        this.order = order;
        this.names = names;
        this.picker = picker;
        this.stack = stack;
    }

    LimitView limit(Card card) {
        Severity severity = card.ruled() instanceof Limit limit ? limit.severity().orElse(Severity.BREACH)
                : Severity.BREACH;
        Optional<String> says = picker.one(card.holding(Says.class)).map(said -> said.fact().text());
        Optional<String> mend = picker.one(card.holding(MendText.class)).map(said -> said.fact().text());
        List<LimitLine> lines = new ArrayList<>(stack.of(card));
        for (Said<Taking> said : picker.each(card.holding(Taking.class), LimitMaker::key)) {
            Taking taking = said.fact();
            Selector subjects = names.selector(taking.subjects());
            Selector objects = names.selector(taking.objects());
            lines.add(new TakingView(taking, order.title(said.book()), subjects, objects, objects.without(subjects)));
        }
        picker.one(card.holding(Keep.class)).ifPresent(
                said -> lines.add(new KeepView(said.fact(), order.title(said.book()))));
        for (Said<Before> said : picker.each(card.holding(Before.class), line -> List.of(line.first(), line.then()))) {
            Before before = said.fact();
            lines.add(new BeforeView(before, order.title(said.book()), names.selector(List.of(before.first())),
                    names.selector(List.of(before.then()))));
        }
        FormulaMaker formulas = new FormulaMaker(card, picker, names, findings);
        Optional<FormulaMaker> unchanged = FormulaMaker.unchanged(card, picker, names);
        lines.addAll(alwaysStack.always(card, formulas, unchanged));
        return new LimitView(card.id(), card.ruled().title(), severity, says, mend, alwaysStack.provided(card, formulas, unchanged),
                List.copyOf(lines));
    }

    private static TakingKey key(Taking taking) {
        return new TakingKey(taking.subjects(), taking.relation(), taking.objects(), taking.scope());
    }
}
