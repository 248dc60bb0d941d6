/** Shelves from tables and to tables: comma-separated values as RFC 4180 has them. */
package org.cantonment.desk.csv;
