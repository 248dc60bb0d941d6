package org.cantonment.rules.view;

import java.util.List;

import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.Type;

/**
 * An expression looked up for one time: its names replaced by what they stand for, its selections by numbers. The use of
 * a name has what the name stands for as its only part; all uses share that part.
 *
 * @param of who is meant; null for what means nobody in particular
 * @param depth how deep its parts lie, its own level included
 * @param asksOwn whether it asks for something of the one unit or formation that 'its' means
 */
public record Formula(Expression said, List<Formula> parts, Selector of, int depth, boolean asksOwn) {

    public Formula {
        parts = List.copyOf(parts);
    }

    /** A formula of an expression with parts. */
    public static Formula of(Expression said, List<Formula> parts, Selector of) {
        int depth = 1;
        boolean own = said instanceof Own;
        for (Formula part : parts) {
            depth = Math.max(depth, part.depth() + 1);
            own |= part.asksOwn() && !(said instanceof Gathering);
        }
        return new Formula(said, parts, of, depth, own);
    }

    /** Its only part, or the first. */
    public Formula part() {
        return parts.get(0);
    }

    /** What it is worth. */
    public Type type() {
        return said.type();
    }
}
