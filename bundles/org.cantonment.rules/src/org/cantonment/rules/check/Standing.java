package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.rules.expression.Answer;
import org.cantonment.rules.expression.Evaluator;
import org.cantonment.rules.expression.Field;
import org.cantonment.rules.expression.Gap;
import org.cantonment.rules.expression.Value;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.ProvidedView;

/** Which limits hold for one case: those whose conditions are all so. Asked once, when first wanted. */
public final class Standing {

    /** A condition of which nobody can tell whether it is so. */
    record Untold(LimitView limit, ProvidedView line, Gap why) {
    }

    private final List<Untold> untold = new ArrayList<>(0);
    private List<LimitView> holding;
    private Evaluator evaluator;

    List<LimitView> of(Case about) {
        if (holding == null) {
            List<LimitView> all = new ArrayList<>();
            for (LimitView limit : about.ruling().limits()) {
                if (limit.conditions().isEmpty() || holds(about, limit)) {
                    all.add(limit);
                }
            }
            holding = all;
        }
        return holding;
    }

    /** Conditions that could not be told, so that their limits do not hold. */
    List<Untold> untold(Case about) {
        of(about);
        return untold;
    }

    Evaluator evaluator(Case about) {
        if (evaluator == null) {
            evaluator = new Evaluator(new CaseField(about));
        }
        return evaluator;
    }

    private boolean holds(Case about, LimitView limit) {
        Untold open = null;
        for (ProvidedView line : limit.conditions()) {
            Value value = evaluator(about).value(line.formula(), Field.ALL, Field.ALL);
            if (value == Answer.NO) {
                return false;
            }
            open = value instanceof Gap gap && open == null ? new Untold(limit, line, gap) : open;
        }
        if (open != null) {
            untold.add(open);
        }
        return open == null;
    }
}
