/** The meaning: what ranges, rule sets, lists, shelves and campaigns say once their text is read. */
package org.cantonment.domain;
