package org.cantonment.desk;

import java.util.List;

/**
 * One way to mend a finding.
 *
 * @param label what it does, in words
 * @param edits the changes of text that do it, none overlapping another; empty if it is advice only
 */
public record TextMend(String label, List<TextChange> edits) {
	public TextMend {
		edits = List.copyOf(edits);
	}
}
