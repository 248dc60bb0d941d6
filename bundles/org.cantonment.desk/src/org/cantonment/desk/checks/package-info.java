/** Checks that others wrote, told to people: which are at hand, what they take, where a new one is put. */
package org.cantonment.desk.checks;
