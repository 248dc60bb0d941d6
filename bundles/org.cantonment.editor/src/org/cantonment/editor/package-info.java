/** Any Xtext notation in an Eclipse text editor; knows nothing of campaigns. */
package org.cantonment.editor;
