package org.cantonment.domain.finding;

/** How grave a finding is; the gravest comes first. */
public enum Severity {
    BREACH, CAUTION, NOTE
}
