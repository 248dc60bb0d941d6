/** What a check says, and what would mend it. */
package org.cantonment.domain.finding;
