package org.cantonment.domain.campaign;

/** A deed of one word. */
public enum PlainVerb {
    RESTED, RESTS, JOINED, WITHDREW
}
