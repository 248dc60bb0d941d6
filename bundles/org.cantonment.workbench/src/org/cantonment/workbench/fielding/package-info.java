/** What a shelf can field: the turnout of the list that is edited, and the reach of its player. */
package org.cantonment.workbench.fielding;
