package org.cantonment.domain.campaign;

/** What may be shown to others. */
public enum Shown {
    LISTS, SHELVES, COSTS, NAMES, RESULTS
}
