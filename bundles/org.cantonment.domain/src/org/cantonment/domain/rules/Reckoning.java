package org.cantonment.domain.rules;

/** Where a limit counts. The default is all that stands under the rule set that says it. */
public enum Reckoning {
    DEFAULT, LIST, CONTINGENT, CAMPAIGN, EACH_FORMATION, EACH_OF
}
