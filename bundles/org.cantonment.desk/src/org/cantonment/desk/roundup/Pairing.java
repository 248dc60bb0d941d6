package org.cantonment.desk.roundup;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * A meeting that was arranged.
 *
 * @param round   in which round
 * @param first   who is named first
 * @param second  the other
 * @param table   where
 * @param session on which evening
 */
public record Pairing(int round, Id first, Id second, Optional<Id> table, Optional<Id> session) {
}
