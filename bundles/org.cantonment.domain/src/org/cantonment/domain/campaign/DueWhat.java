package org.cantonment.domain.campaign;

/** What is due. */
public enum DueWhat {
    LISTS, REVEAL, RESULTS, PROTESTS
}
