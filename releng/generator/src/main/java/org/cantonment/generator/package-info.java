/** Writes the code that follows from the model's Ecore files and the notation's grammar. */
package org.cantonment.generator;
