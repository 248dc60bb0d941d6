/** Tests of the desk and the command line. */
package org.cantonment.desk.tests;
