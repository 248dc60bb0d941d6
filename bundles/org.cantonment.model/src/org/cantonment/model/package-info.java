/** The text's typed form, generated from the Ecore files in {@code model/}; no logic by hand. */
package org.cantonment.model;
