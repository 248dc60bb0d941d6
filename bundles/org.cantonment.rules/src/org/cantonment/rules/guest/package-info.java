/** Asks checks that others wrote, and keeps their faults to themselves. */
package org.cantonment.rules.guest;
