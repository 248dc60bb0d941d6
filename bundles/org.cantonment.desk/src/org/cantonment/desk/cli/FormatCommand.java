package org.cantonment.desk.cli;

import java.util.List;

/** {@code format PATH…}. */
final class FormatCommand {
	FormatCommand(Terminal terminal) {
	}

	int run(List<String> words, boolean check) {
		throw new WrongCall("not yet");
	}
}
