package org.cantonment.stock.eras;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.turnout.Reason;

/**
 * What a shelf has for one unit, by itself and at its least strength.
 *
 * @param strength its least strength
 * @param copies how many of it can stand at once; {@link #ENDLESS} if it needs nothing from the shelf
 * @param proven whether there cannot be more; false only where a search was cut off
 * @param lacking how many pieces the first lacks; 0 if there is one
 * @param reasons why the first is short
 */
public record UnitAnswer(Id unit, int strength, int copies, boolean proven, int lacking, List<Reason> reasons) {

    /** More than any shelf can field. */
    public static final int ENDLESS = 1_000_000;

    public UnitAnswer {
        reasons = List.copyOf(reasons);
    }
}
