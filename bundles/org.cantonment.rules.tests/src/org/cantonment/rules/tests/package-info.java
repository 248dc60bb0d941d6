/** Tests of the judge. */
package org.cantonment.rules.tests;
