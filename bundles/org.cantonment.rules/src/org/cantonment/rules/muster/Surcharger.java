package org.cantonment.rules.muster;

import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.rules.expression.Amount;
import org.cantonment.rules.expression.Answer;
import org.cantonment.rules.expression.Evaluator;
import org.cantonment.rules.expression.Gap;
import org.cantonment.rules.expression.Value;
import org.cantonment.rules.view.SurchargeView;

/**
 * Adds to the prices of a muster what hangs on the rest of the list. Who asks for the points of others comes after them;
 * the ruling has the order, and no circles. A started point counts as a whole one, and nothing costs less than nothing.
 */
final class Surcharger {

    private final Muster muster;
    private final Pricer pricer;

    Surcharger(Muster muster, Pricer pricer) {
        this.muster = muster;
        this.pricer = pricer;
    }

    void price() {
        if (muster.ruling().surcharged().isEmpty()) {
            return;
        }
        for (int choice : muster.ruling().surcharged()) {
            if (muster.count(choice) > 0) {
                // What a name came to before this choice was priced may hang on points that change with it.
                Evaluator evaluator = new Evaluator(new MusterField(muster, CancelToken.NEVER));
                for (Node node : muster.nodes()) {
                    if (node.choice != null && node.choice.index() == choice && node.copies > 0) {
                        price(node, evaluator);
                    }
                }
            }
        }
    }

    private void price(Node node, Evaluator evaluator) {
        for (SurchargeView line : node.choice.surcharges()) {
            Value holds = line.condition().map(condition -> evaluator.value(condition, MusterField.ALL, node.index)).orElse(Answer.YES);
            Value amount = holds == Answer.YES ? evaluator.value(line.amount(), MusterField.ALL, node.index) : holds;
            if (amount instanceof Gap gap) {
                muster.unpriced().add(new Unpriced(node, line, gap));
            } else if (amount instanceof Amount points) {
                add(node, line, points.ratio());
            }
        }
        if (node.points < 0) {
            charge(node, "no less than nothing", -node.points, Optional.empty());
        }
    }

    private void add(Node node, SurchargeView line, Ratio points) {
        Ratio signed = line.surcharge().cheaper() ? points.negated() : points;
        Ratio each = line.surcharge().each() ? signed.times(Ratio.of(Math.max(1, node.strength))) : signed;
        if (each.beyond()) {
            muster.unpriced().add(new Unpriced(node, line, Gap.BEYOND));
            return;
        }
        long whole = each.up().number();
        if (whole != 0) {
            charge(node, line.words(), Pricer.bounded(whole, node.copies), Optional.of(line));
        }
    }

    private void charge(Node node, String words, long points, Optional<SurchargeView> line) {
        muster.charge(node, points);
        pricer.add(node, new TallyPart(words, points, line.map(SurchargeView::id)));
    }
}
