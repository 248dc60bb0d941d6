package org.cantonment.notation.reading;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.NameUse;
import org.cantonment.domain.expression.Type;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.ruleset.Let;
import org.cantonment.model.ruleset.LetUse;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Reads the expressions of a book. What a name stands for is looked at only for its type and for what it asks; names
 * that lead back to themselves, or through more others than anybody can follow, are findings.
 */
final class ExpressionReader {

    /** So many names may lean on one another. */
    static final int MOST_NAMES = 30;

    private final Reading reading;
    private final NameDepths depths;
    private final Map<Let, Optional<Expression>> known;

    ExpressionReader(Reading reading) {
        this(reading, new NameDepths(), new HashMap<>());
    }

    private ExpressionReader(Reading reading, NameDepths depths, Map<Let, Optional<Expression>> known) {
        this.reading = reading;
        this.depths = depths;
        this.known = known;
    }

    /** What a let line gives a name to. */
    Optional<Expression> named(Let let) {
        int depth = let.getExpression() == null ? 1 : depths.of(let);
        if (depth == NameDepths.CIRCLE) {
            reading.problem(let.getExpression(), null, Severity.BREACH, Codes.CIRCLE, let.getName()
                    + " is worked out of itself.");
        } else if (depth == MOST_NAMES + 1) {
            reading.problem(let.getExpression(), null, Severity.BREACH, Codes.EXPRESSION_DEEP,
                    "More than " + MOST_NAMES + " names lean on one another here.");
        }
        return depth == NameDepths.CIRCLE || depth > MOST_NAMES ? Optional.empty() : read(let, let.getExpression(), true);
    }

    /**
     * What must be a yes or no.
     *
     * @param own whether there is a unit or formation that 'its' can mean
     */
    Optional<Expression> yesOrNo(EObject line, org.cantonment.model.ruleset.Expression expression, boolean own) {
        return read(line, expression, own).filter(said -> {
            if (said.type() != Type.YES_NO) {
                reading.problem(expression, null, Severity.BREACH, Codes.EXPRESSION_TYPE,
                        "Here stands something that is so or is not, as in 'count of units is at least 1'; this is a "
                                + "number.");
            }
            return said.type() == Type.YES_NO;
        });
    }

    /** A name alone, which must stand for a number. */
    Optional<Expression> number(EObject at, Let let) {
        if (let == null || let.eIsProxy() || let.getName() == null) {
            return Optional.empty();
        }
        return use(at, let, true).filter(said -> {
            if (said.type() != Type.NUMBER) {
                reading.problem(at, null, Severity.BREACH, Codes.EXPRESSION_TYPE,
                        "Points are a number; " + let.getName() + " is a yes or no.");
            }
            return said.type() == Type.NUMBER;
        });
    }

    private Optional<Expression> read(EObject line, org.cantonment.model.ruleset.Expression expression, boolean own) {
        if (expression == null || spoilt(line)) {
            return Optional.empty();
        }
        return Optional.ofNullable(new PartsReader(reading, this, expression.getParts()).read(own));
    }

    /** A line that could not be read as it stands is a finding already. */
    private static boolean spoilt(EObject line) {
        ICompositeNode node = NodeModelUtils.findActualNodeFor(line);
        if (node == null) {
            return true;
        }
        for (INode each : node.getAsTreeIterable()) {
            if (each.getSyntaxErrorMessage() != null) {
                return true;
            }
        }
        return false;
    }

    /** The use of a name; empty if it stands for nothing that can be worked out. */
    Optional<Expression> use(LetUse part, boolean own) {
        Let let = part.getLet();
        return let == null || let.eIsProxy() || let.getName() == null ? Optional.empty() : use(part, let, own);
    }

    private Optional<Expression> use(EObject at, Let let, boolean own) {
        Optional<Expression> stands = known.get(let);
        if (stands == null) {
            // Its own line says what is wrong with it.
            stands = new ExpressionReader(new Reading(""), depths, known).named(let);
            known.put(let, stands);
        }
        if (stands.isPresent() && !own && asksOwn(stands.get())) {
            reading.problem(at, null, Severity.BREACH, Codes.EXPRESSION_PLACE, let.getName()
                    + " asks for something that is 'its', and there is nobody here whom that could mean.");
            return Optional.empty();
        }
        return stands.map(said -> new NameUse(let.getName(), said.type()));
    }

    private boolean asksOwn(Expression said) {
        return said instanceof org.cantonment.domain.expression.Own
                || !(said instanceof org.cantonment.domain.expression.Gathering)
                        && said.parts().stream().anyMatch(this::asksOwn);
    }
}
