/**
 * From document to meaning: the one way. What makes no sense becomes a finding at its place and is left out; nothing
 * else is.
 */
package org.cantonment.notation.reading;
