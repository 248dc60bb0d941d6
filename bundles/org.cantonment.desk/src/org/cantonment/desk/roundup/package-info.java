/** Where a campaign stands: who plays whom, results so far, lists in and missing, what is due next. */
package org.cantonment.desk.roundup;
