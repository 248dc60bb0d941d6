/**
 * The small language in which a rule says what the fixed forms cannot: free of effects, typed, exact. Nothing here is
 * worked out; the rules do that.
 */
package org.cantonment.domain.expression;
