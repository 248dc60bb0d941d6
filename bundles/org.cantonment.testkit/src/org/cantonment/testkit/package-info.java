/** What several test bundles need. */
package org.cantonment.testkit;
