/** The judge's own checks: one class for each family of rules. */
package org.cantonment.rules.check;
