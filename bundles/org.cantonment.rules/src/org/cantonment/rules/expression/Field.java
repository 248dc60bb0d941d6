package org.cantonment.rules.expression;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.rules.view.Selector;

/**
 * What expressions ask. An element is one copy of a unit of the list, or of a formation with what stands in it, by its
 * number; {@link #ALL} is everything that stands under the rule set.
 */
public interface Field {

    /** Everything under the rule set. */
    int ALL = -1;

    /** How many of somebody, or what they add up to. */
    Value quantity(Quantity said, Selector of, int element);

    /** How many options those who are meant take, or how many of one. */
    long options(Optional<String> option, Selector of, int element);

    /** How many pieces are needed or there. */
    Value pieces(PiecesOf said, int element);

    /** What stands fixed. */
    Value given(Given.What what);

    /** Whether the era is one of these. */
    Value eraIs(List<Id> eras);

    /** Something about an element itself. */
    long own(Own.What what, int element);

    /** The next element of an element that is meant, from a number on; -1 if there is none. */
    int next(Selector over, int element, int from);

    /** How many copies of an element stand in one copy of another. */
    long copies(int element, int within);

    /** How many entries have to be looked at for a question about an element. */
    int size(int element);

    /** Says when nobody wants the answer any more. */
    CancelToken cancel();
}
