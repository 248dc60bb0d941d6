package org.cantonment.domain.campaign;

/** Whether the chain begins anew for those still tied. */
public enum Chain {
    UNSAID, RESTARTS, GOES_ON
}
