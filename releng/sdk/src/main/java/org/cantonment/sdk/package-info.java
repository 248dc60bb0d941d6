/** Packs what an author of checks needs: a Maven repository, the reference, the example and a first page to read. */
package org.cantonment.sdk;
