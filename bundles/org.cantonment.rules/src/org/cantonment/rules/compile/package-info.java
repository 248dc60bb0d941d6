/** Makes a ruling out of books: puts eras and layers together and looks every name up once. */
package org.cantonment.rules.compile;
