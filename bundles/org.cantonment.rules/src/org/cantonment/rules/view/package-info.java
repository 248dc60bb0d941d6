/**
 * The rules as they stand at one time: eras and layers applied, names looked up, ready to be judged by.
 * Made once for a set of books and an occasion, and then only read, from any thread.
 */
package org.cantonment.rules.view;
