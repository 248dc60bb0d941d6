package org.cantonment.rules.place;

import java.util.List;

/** A billet or support with places: it is used through exactly one of its rooms, of which there is at least one. */
public record Slot(List<Bay> bays) {
}
