package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** What a withdrawal under this share of games played does to the results: struck, or they stand. */
public record Struckout(Id id, int underPercent, boolean struck) {
}
