package org.cantonment.desk.judging;

import java.util.List;
import java.util.stream.Stream;

import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.rules.Always;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Let;
import org.cantonment.domain.rules.Provided;
import org.cantonment.domain.rules.RuleSet;

/** Whether rules ask for pieces: only then does a verdict hang on shelves and ranges. */
final class PiecesAsked {

    private PiecesAsked() {
    }

    static boolean in(RuleSet book) {
        return book.limits().stream().anyMatch(limit -> in(limit.facts()))
                || book.changes().stream().anyMatch(change -> in(change.facts()));
    }

    private static boolean in(List<Fact> facts) {
        return facts.stream().flatMap(PiecesAsked::said).anyMatch(PiecesAsked::asks);
    }

    private static Stream<Expression> said(Fact fact) {
        return fact instanceof Always always ? Stream.of(always.expression())
                : fact instanceof Let let ? Stream.of(let.expression())
                        : fact instanceof Provided provided ? Stream.of(provided.condition()) : Stream.empty();
    }

    private static boolean asks(Expression said) {
        return said instanceof PiecesOf || said.parts().stream().anyMatch(PiecesAsked::asks);
    }
}
