/** Runs inside the product and does there what its install dialog does, without the dialog. */
package org.cantonment.install;
