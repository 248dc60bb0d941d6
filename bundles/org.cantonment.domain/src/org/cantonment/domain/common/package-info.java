/** What every kind of book shares: ids, spans, times of validity, settings, progress and cancelling. */
package org.cantonment.domain.common;
