package org.cantonment.domain.campaign;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * A rule.
 *
 * @param rule the unit, formation, support or limit whose rule it is
 * @param at   the one unit or formation for which it is let off
 */
public record FromRule(Id rule, Optional<Id> at) implements Excused {
}
