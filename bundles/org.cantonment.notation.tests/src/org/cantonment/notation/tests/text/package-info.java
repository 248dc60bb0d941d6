/** Tests of what the notation makes of texts: findings, mends, layout, links, completion. */
package org.cantonment.notation.tests.text;
