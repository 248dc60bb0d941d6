/**
 * The door for checks that others write, version 1.0.
 *
 * <p>A check is an OSGi service of type {@link org.cantonment.rules.api.RuleCheck}; a campaign asks for it by name, with
 * settings, in a line such as {@code check River-Crossing with Banks 2 from round 4}. It sees records of
 * {@code org.cantonment.domain} only, and answers with findings and mends of {@code org.cantonment.domain.finding}.
 *
 * <p><b>What is promised.</b> Types of this package stay as they are up to version 2.0; new methods of an interface have a
 * body, and what is to go is first announced. A plug-in imports this package and those of the domain with the range
 * {@code [1.0,2)}. Records of the domain may gain parts, so a check reads them by their accessors and does not make
 * others than findings and mends.
 *
 * <p><b>What happens to a check that misbehaves.</b> One that throws, answers nothing or nonsense, takes too long, takes too
 * much memory or answers one question in two ways is named in a finding at the campaign's line, with what it did, and is
 * not asked again in that session. Findings of other checks stand.
 *
 * <p>Further doors (pairing, scoring, bulletins, importing) will be further interfaces here, each a
 * {@link org.cantonment.rules.api.Guest}.
 */
package org.cantonment.rules.api;
