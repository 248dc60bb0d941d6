/** From characters to lines: what stands between Xtext's lexer and its parser, and the words for what went wrong. */
package org.cantonment.notation.parse;
