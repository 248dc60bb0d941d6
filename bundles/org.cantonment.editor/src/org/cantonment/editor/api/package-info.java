/**
 * What a language brings along to be edited: the door between the editor, which knows no language,
 * and the bundle that does. Everything that passes through it is immutable.
 */
package org.cantonment.editor.api;
