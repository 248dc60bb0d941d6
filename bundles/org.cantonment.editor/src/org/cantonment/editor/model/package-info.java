/**
 * One model for each open document. Edits queue to one worker that updates, links, validates and hands
 * an immutable snapshot to whoever listens; the screen's thread does nothing but draw it. The model
 * belongs to the file buffer, so every collaborator finds it by its document.
 */
package org.cantonment.editor.model;
