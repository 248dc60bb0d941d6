package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.expression.Arithmetic;
import org.cantonment.domain.expression.Arithmetic.Operator;
import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.Comparison.Relation;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Logic;
import org.cantonment.domain.expression.Negation;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.expression.Rounded;
import org.cantonment.domain.expression.Selection;
import org.cantonment.domain.expression.Type;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.ruleset.LetUse;
import org.cantonment.model.ruleset.Part;
import org.cantonment.model.ruleset.Sign;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Puts the parts of one expression together. From closest to widest: times, divided by, percent of and what rounds them;
 * plus and minus; but at most and but at least; what compares; not; and or or. What stands behind 'has' and 'with' reaches
 * to the end of the line, what stands behind the 'of' of a sum to the next word that compares.
 */
final class PartsReader {

    private static final int MOST_GATHERINGS = 6;
    private static final Map<String, Operator> CLOSE = Map.of("times", Operator.TIMES, "divided by", Operator.DIVIDED_BY,
            "percent of", Operator.PERCENT_OF);
    private static final Map<String, Operator> WIDE = Map.of("plus", Operator.PLUS, "minus", Operator.MINUS);
    private static final Map<String, Operator> KEEPS = Map.of("but at most", Operator.BUT_AT_MOST, "but at least",
            Operator.BUT_AT_LEAST);
    private static final Map<String, Relation> COMPARES = Map.of("is", Relation.IS, "is at least", Relation.AT_LEAST,
            "is at most", Relation.AT_MOST, "is more than", Relation.MORE, "is less than", Relation.LESS);

    /** Thrown and caught within this class alone: the rest of the line means nothing, and why has been said. */
    private static final class Nothing extends Exception {
        private static final long serialVersionUID = 1L;

        Nothing() {
            super("", null, false, false);
        }
    }

    private final Reading reading;
    private final ExpressionReader names;
    private final PartReader reader;
    private final List<Part> parts;
    private int at;
    private int gatherings;
    private boolean own;

    PartsReader(Reading reading, ExpressionReader names, List<Part> parts) {
        this.reading = reading;
        this.names = names;
        this.reader = new PartReader(reading);
        this.parts = parts;
    }

    /** Null if it means nothing; then a finding was made, here or by who read the form. */
    Expression read(boolean ownAtFirst) {
        own = ownAtFirst;
        try {
            Expression whole = sentence();
            return at < parts.size() ? null : whole;
        } catch (Nothing nothing) {
            return null;
        }
    }

    private Expression sentence() throws Nothing {
        Part start = peek();
        Expression first = comparison();
        if (!"and".equals(sign()) && !"or".equals(sign())) {
            return first;
        }
        String word = sign();
        List<Expression> all = new ArrayList<>();
        all.add(is(Type.YES_NO, first, start, word));
        while ("and".equals(sign()) || "or".equals(sign())) {
            if (!word.equals(sign())) {
                throw problem(peek(), Codes.EXPRESSION_OPEN, "'and' and 'or' in one line can be taken in two ways; give "
                        + "one of the two sides a name with 'let'.");
            }
            at++;
            Part next = peek();
            all.add(is(Type.YES_NO, comparison(), next, word));
        }
        return new Logic(word.equals("and"), all);
    }

    private Expression comparison() throws Nothing {
        Part start = peek();
        Expression left = arithmetic(KEEPS);
        Relation relation = COMPARES.get(sign());
        if (relation == null) {
            return left;
        }
        Part said = parts.get(at++);
        if (relation == Relation.IS && peek() instanceof org.cantonment.model.ruleset.Negation) {
            relation = Relation.IS_NOT;
            at++;
        }
        Part next = peek();
        Expression right = arithmetic(KEEPS);
        boolean equality = relation == Relation.IS || relation == Relation.IS_NOT;
        if (!equality) {
            is(Type.NUMBER, left, start, relation.words());
            is(Type.NUMBER, right, next, relation.words());
        } else if (left.type() != right.type()) {
            throw problem(said, Codes.EXPRESSION_TYPE, "On one side stands " + left.type().words() + ", on the other "
                    + right.type().words() + "; they cannot be held against each other.");
        }
        if (COMPARES.containsKey(sign())) {
            throw problem(peek(), Codes.EXPRESSION_OPEN, "One line compares once; write the second comparison behind "
                    + "'and', with both its sides.");
        }
        return new Comparison(relation, left, right);
    }

    /** Numbers put together by words of one rank, from left to right. */
    private Expression arithmetic(Map<String, Operator> rank) throws Nothing {
        Part start = peek();
        Expression left = closer(rank);
        if (rank == CLOSE) {
            left = rounded(left, start);
        }
        while (rank.containsKey(sign())) {
            Operator operator = rank.get(sign());
            is(Type.NUMBER, left, start, operator.words());
            at++;
            Part next = peek();
            Expression right = is(Type.NUMBER, closer(rank), next, operator.words());
            if (operator == Operator.DIVIDED_BY && Ratio.ZERO.equals(constant(right))) {
                throw problem(next, Codes.EXPRESSION_ZERO, "Nothing can be divided by 0.");
            }
            left = new Arithmetic(operator, left, right);
            if (rank == CLOSE) {
                left = rounded(left, start);
            }
        }
        return left;
    }

    private Expression closer(Map<String, Operator> rank) throws Nothing {
        return rank == KEEPS ? arithmetic(WIDE) : rank == WIDE ? arithmetic(CLOSE) : single();
    }

    /** What rounds stands behind all that is multiplied and divided before it. */
    private Expression rounded(Expression term, Part start) throws Nothing {
        Expression result = term;
        while (peek() instanceof org.cantonment.model.ruleset.Rounded rounded) {
            is(Type.NUMBER, result, start, "rounded");
            result = new Rounded(result, rounded.isUp());
            at++;
        }
        return result;
    }

    private Expression single() throws Nothing {
        if (peek() instanceof org.cantonment.model.ruleset.Negation) {
            return negation();
        }
        if (peek() instanceof org.cantonment.model.ruleset.Gathering gathering) {
            at++;
            Selection over = reader.selection(gathering.getAll(), gathering.getOf());
            Gathering.Act act = Words.of(Gathering.Act.class, gathering.getAct()).orElseThrow(Nothing::new);
            return gathering(act, over, gathering);
        }
        if (peek() == null) {
            throw new Nothing();
        }
        Part part = parts.get(at++);
        Expression said = part instanceof LetUse use ? names.use(use, own).orElse(null) : reader.read(part);
        if (said == null) {
            throw new Nothing();
        }
        if (said instanceof Own && !own) {
            throw problem(part, Codes.EXPRESSION_PLACE, "'its' means one unit or formation, behind 'each … has', 'any … "
                    + "has', 'count of … with' or 'sum per … of'; there is none here.");
        }
        return "with".equals(sign()) ? counted(part, said) : said;
    }

    private Expression negation() throws Nothing {
        boolean not = false;
        while (peek() instanceof org.cantonment.model.ruleset.Negation) {
            not = !not;
            at++;
        }
        Part next = peek();
        Expression of = is(Type.YES_NO, comparison(), next, "not");
        return not ? new Negation(of) : of;
    }

    private Expression counted(Part part, Expression said) throws Nothing {
        if (!(said instanceof Quantity quantity) || quantity.measure() != Quantity.Measure.COUNT
                || quantity.in() != Quantity.Stretch.HERE) {
            throw problem(peek(), Codes.EXPRESSION_PLACE, "'with' stands only behind 'count of' and who is counted.");
        }
        at++;
        return gathering(Gathering.Act.COUNT, quantity.of(), part);
    }

    private Expression gathering(Gathering.Act act, Selection over, Part said) throws Nothing {
        if (over == null || peek() == null) {
            throw new Nothing();
        }
        if (++gatherings > MOST_GATHERINGS) {
            throw problem(said, Codes.EXPRESSION_DEEP, "More than " + MOST_GATHERINGS + " of these in one line are "
                    + "beyond all reading aloud.");
        }
        boolean before = own;
        own = true;
        Part next = peek();
        boolean asks = act == Gathering.Act.EACH || act == Gathering.Act.ANY || act == Gathering.Act.COUNT;
        String word = asks ? act == Gathering.Act.COUNT ? "with" : "has" : "of";
        Expression body = asks ? is(Type.YES_NO, sentence(), next, word) : is(Type.NUMBER, arithmetic(KEEPS), next, word);
        own = before;
        return new Gathering(act, over, body);
    }

    private Part peek() {
        return at < parts.size() ? parts.get(at) : null;
    }

    /** The words of the sign that comes next; empty if there is none. */
    private String sign() {
        return peek() instanceof Sign sign && sign.getSign() != null ? sign.getSign().strip().replaceAll("\\s+", " ") : "";
    }

    private Expression is(Type wanted, Expression said, Part start, String word) throws Nothing {
        if (said.type() != wanted) {
            String what = start == null ? "this" : "'" + NodeModelUtils.getTokenText(NodeModelUtils.findActualNodeFor(start))
                    + "'";
            throw problem(start, Codes.EXPRESSION_TYPE, "'" + word + "' takes " + wanted.words() + "; what begins with "
                    + what + " is " + said.type().words() + ".");
        }
        return said;
    }

    private Nothing problem(EObject where, String code, String message) {
        reading.problem(where == null ? parts.get(parts.size() - 1) : where, null, Severity.BREACH, code, message);
        return new Nothing();
    }

    /** What it comes to if only numbers stand in it; else null. */
    private static Ratio constant(Expression said) {
        if (said instanceof Figure figure) {
            return figure.value();
        }
        if (said instanceof Rounded rounded) {
            Ratio number = constant(rounded.number());
            return number == null ? null : rounded.round(number);
        }
        if (said instanceof Arithmetic sum) {
            Ratio left = constant(sum.left());
            Ratio right = left == null ? null : constant(sum.right());
            return right == null ? null : sum.operator().of(left, right);
        }
        return null;
    }
}
