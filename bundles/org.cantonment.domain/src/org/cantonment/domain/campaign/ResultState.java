package org.cantonment.domain.campaign;

/** How firm a result is. */
public enum ResultState {
    REPORTED, CONFIRMED, DISPUTED, RULED
}
