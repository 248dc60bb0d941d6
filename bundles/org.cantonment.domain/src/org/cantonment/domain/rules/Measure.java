package org.cantonment.domain.rules;

/**
 * What a bound measures: how many, how many points, or the share of points in percent of the points used or of the
 * limit.
 */
public enum Measure {
    COUNT, POINTS, PERCENT_OF_USED, PERCENT_OF_LIMIT
}
