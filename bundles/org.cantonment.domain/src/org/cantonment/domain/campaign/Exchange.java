package org.cantonment.domain.campaign;

/** What was given in return. */
public sealed interface Exchange permits
        ForNothing, ForMoney, ForThings {
}
