/** Completion, hover, outline, quick fixes and rename as plain data; the language server. */
package org.cantonment.notation.ide;
