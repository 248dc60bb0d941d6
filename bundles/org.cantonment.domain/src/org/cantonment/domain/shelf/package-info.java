/** A collection as it lies in the cupboard. */
package org.cantonment.domain.shelf;
