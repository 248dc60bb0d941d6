/** How far shelves are from formations, drawn by lot, and the same asked of another library. */
package org.cantonment.references.reach;
