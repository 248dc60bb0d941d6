/** Whether a shelf can field a list, several lists share its builds, and an evening's players lend each other what is short. */
package org.cantonment.desk.turnout;
