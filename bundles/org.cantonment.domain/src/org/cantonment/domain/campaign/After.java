package org.cantonment.domain.campaign;

/** The hour from which something is shown. */
public enum After {
    AT_ONCE, REVEAL, PLAY, RESULTS
}
