/** The view of what a layer or a changed book of rules would do to all lists, before anybody adopts it. */
package org.cantonment.workbench.adopting;
