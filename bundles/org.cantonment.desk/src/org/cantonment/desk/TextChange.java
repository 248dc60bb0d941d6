package org.cantonment.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One change of a file's text.
 *
 * @param file   the file
 * @param offset where what goes begins, from 0, in UTF-16 units
 * @param length how much goes, in UTF-16 units; 0 where something is only put in
 * @param text   what comes
 */
public record TextChange(Path file, int offset, int length, String text) {
	/**
	 * A text with changes made to it.
	 *
	 * @param text    the text that the changes were made for
	 * @param changes changes of one file, in any order
	 * @throws IllegalArgumentException if two changes overlap or one lies outside the text
	 */
	public static String apply(String text, List<TextChange> changes) {
		List<TextChange> sorted = new ArrayList<>(changes);
		sorted.sort(Comparator.comparingInt(TextChange::offset));
		StringBuilder out = new StringBuilder(text.length() + 64);
		int at = 0;
		for (TextChange change : sorted) {
			if (change.offset < at || change.length < 0 || change.offset + change.length > text.length()) {
				throw new IllegalArgumentException("A change at " + change.offset + " overlaps or lies outside");
			}
			out.append(text, at, change.offset).append(change.text);
			at = change.offset + change.length;
		}
		return out.append(text, at, text.length()).toString();
	}
}
