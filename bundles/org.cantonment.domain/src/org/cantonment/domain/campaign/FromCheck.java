package org.cantonment.domain.campaign;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * A check written by others.
 *
 * @param name its name, whichever line of the campaign turns it on
 * @param at   the one unit or formation for which it is let off
 */
public record FromCheck(String name, Optional<Id> at) implements Excused {
}
