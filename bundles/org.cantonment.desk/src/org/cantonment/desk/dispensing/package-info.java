/** The organiser's word against a finding, offered as a mend that is written into the campaign. */
package org.cantonment.desk.dispensing;
