/**
 * How the command line starts quickly: without OSGi, from a class path of exactly the bundles it needs.
 *
 * <p>Uses nothing but the JDK, because it runs before that class path is there.
 */
package org.cantonment.desk.start;
