/** Tests that books mean what they say. */
package org.cantonment.notation.tests.reading;
