/** Tests of buying. */
package org.cantonment.buying.tests;
