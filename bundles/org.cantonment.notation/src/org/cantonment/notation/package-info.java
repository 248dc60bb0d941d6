/** The notation: grammar, scopes, formatting, and the one way from document to meaning. */
package org.cantonment.notation;
