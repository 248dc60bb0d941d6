/**
 * The door for checks that others write. A check is an OSGi service of type {@link org.cantonment.rules.api.RuleCheck}; a
 * campaign asks for it by name, with settings, in a line {@code check Name with Setting 2}. It sees only records of
 * {@code org.cantonment.domain}.
 *
 * <p>A check that throws, takes too long or hands back nonsense is named in a finding and not asked again in that
 * session; nothing else is touched. The types of this package are stable: what is to go is first announced.
 */
package org.cantonment.rules.api;
