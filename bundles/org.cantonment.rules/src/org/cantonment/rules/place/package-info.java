/** Who stands in which billet: a greatest matching of what is there with the places there are. */
package org.cantonment.rules.place;
