package org.cantonment.desk.files;

import java.util.Arrays;

/** Where the lines of a text begin. Lines and columns count from 1; a column counts UTF-16 units, as editors do. */
public final class LineTable {
	private final int[] starts;
	private final int length;

	/** Notes the lines of a text; a line ends with LF, CR LF or CR. */
	public LineTable(String text) {
		int[] found = new int[64];
		int n = 1;
		length = text.length();
		for (int i = 0; i < length; i++) {
			char c = text.charAt(i);
			if (c == '\n' || c == '\r' && (i + 1 == length || text.charAt(i + 1) != '\n')) {
				if (n == found.length) {
					found = Arrays.copyOf(found, 2 * n);
				}
				found[n++] = i + 1;
			}
		}
		starts = Arrays.copyOf(found, n);
	}

	/** How many lines there are, at least one. */
	public int lines() {
		return starts.length;
	}

	/** The line an offset lies on; offsets beyond the text count as its end. */
	public int line(int offset) {
		int at = Arrays.binarySearch(starts, Math.max(0, Math.min(offset, length)));
		return at >= 0 ? at + 1 : -at - 1;
	}

	/** The column of an offset on its line. */
	public int column(int offset) {
		return Math.max(0, Math.min(offset, length)) - starts[line(offset) - 1] + 1;
	}

	/**
	 * Where a line begins.
	 *
	 * @param line 1 to {@link #lines()}
	 */
	public int start(int line) {
		return starts[line - 1];
	}
}
