/** Where a jar with checks that others wrote is put. */
package org.cantonment.desk.checks;
