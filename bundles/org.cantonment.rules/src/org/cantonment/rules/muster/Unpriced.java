package org.cantonment.rules.muster;

import org.cantonment.rules.expression.Gap;
import org.cantonment.rules.view.SurchargeView;

/** A price that could not be worked out: it counts as nothing. */
public record Unpriced(Node node, SurchargeView line, Gap why) {
}
