package org.cantonment.domain.finding;

import org.cantonment.domain.common.Id;

/** Put this text in place of the word at the place. */
public record SetText(Id place, String text) implements Action {
}
