/**
 * Works expressions out: exactly, in bounded time, and never by guessing. What cannot be known, and what comes to
 * nothing, is a {@link org.cantonment.rules.expression.Gap} that says why.
 */
package org.cantonment.rules.expression;
