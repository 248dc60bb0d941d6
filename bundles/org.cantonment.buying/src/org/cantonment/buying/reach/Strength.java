package org.cantonment.buying.reach;

/** How strong a formation is to be. */
public enum Strength {
    /** The fewest units there must be, each at its least strength. */
    LEAST,
    /** The most units there may be, each at its greatest strength; billets for which there is no unit stay empty. */
    MOST
}
