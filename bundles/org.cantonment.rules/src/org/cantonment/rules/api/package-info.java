/** What a check written by others implements, and what it gets to see. */
package org.cantonment.rules.api;
