/** The command line: check, points, eras, adopt, format and roundup. */
package org.cantonment.desk.cli;
