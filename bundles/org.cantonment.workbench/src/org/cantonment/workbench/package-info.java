/** The application: window, perspectives, views. */
package org.cantonment.workbench;
