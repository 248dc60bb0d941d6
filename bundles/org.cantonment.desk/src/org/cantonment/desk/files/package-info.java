/** Files as they lie on the disk: found in a folder, read whatever they hold, written in one step. */
package org.cantonment.desk.files;
