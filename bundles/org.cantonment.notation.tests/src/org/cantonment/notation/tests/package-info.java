/** Tests of the notation and its services. */
package org.cantonment.notation.tests;
