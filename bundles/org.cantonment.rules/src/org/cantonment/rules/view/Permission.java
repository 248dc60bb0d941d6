package org.cantonment.rules.view;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * Whether something may be taken at a time, and if not, why.
 *
 * @param allowed whether it may be taken
 * @param code the finding's code where it may not: {@code era.not-yet} and its like
 * @param reason a clause that goes on after the name: "is not there before The Long Thaw"
 * @param rule the line that says so
 * @param successor what took its place
 */
public record Permission(boolean allowed, String code, String reason, Optional<Id> rule, Optional<Id> successor) {

    /** It may be taken. */
    public static final Permission GRANTED = new Permission(true, "", "", Optional.empty(), Optional.empty());

    /** Whether the era does not have it at all. */
    public boolean outOfEra() {
        return code.startsWith("era.");
    }
}
