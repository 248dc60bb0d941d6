/** From all that is written in a folder to the case of each list: under which rules, when, to how many points. */
package org.cantonment.desk.judging;
