/** What a layer or a changed rule would do to the lists of a campaign, told before anybody adopts it. */
package org.cantonment.desk.adopting;
