/** A list laid out for judging: every entry looked up, counted, priced and placed. */
package org.cantonment.rules.muster;
