/** Tests of how the command line is made ready to start. */
package org.cantonment.desk.tests.start;
