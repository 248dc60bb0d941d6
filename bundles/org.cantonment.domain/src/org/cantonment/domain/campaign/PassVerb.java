package org.cantonment.domain.campaign;

/** How pieces passed to another. */
public enum PassVerb {
    LENT, RETURNED, GAVE, SOLD
}
