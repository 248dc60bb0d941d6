/** Is it legal: judges a list against a rule set. */
package org.cantonment.rules;
