/** Tests of the shelf and what it is enough for. */
package org.cantonment.stock.tests;
