/** Whole folders in the notation, held against what was published or worked out by hand. */
package org.cantonment.desk.tests.outside;
