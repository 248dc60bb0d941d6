/**
 * The text editor of every language: colours, squiggles, hover, completion, links, fixes, layout and
 * outline, all drawn from the snapshots of the document's model.
 */
package org.cantonment.editor.text;
