/** Buying plans: the wares of least cost with which all target lists can be fielded. */
package org.cantonment.buying.plan;
