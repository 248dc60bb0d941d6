/** Tests of the domain records. */
package org.cantonment.domain.tests;
