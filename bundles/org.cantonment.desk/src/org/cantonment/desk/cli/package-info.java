/** The command line: check, points, format and roundup. */
package org.cantonment.desk.cli;
