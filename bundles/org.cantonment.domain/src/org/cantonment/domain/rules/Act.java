package org.cantonment.domain.rules;

/** Forbid: may not be taken. Allow: may be taken whatever the eras say. Lift: the rule does not hold. */
public enum Act {
    FORBID, ALLOW, LIFT
}
