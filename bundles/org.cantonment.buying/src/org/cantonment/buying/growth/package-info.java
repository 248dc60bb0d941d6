/** Growth plans: purchases in stages, each round fielded with what is bought by then and within what may be spent by then. */
package org.cantonment.buying.growth;
