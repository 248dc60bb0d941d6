package org.cantonment.desk.cli;

import org.cantonment.notation.Notation;

/** Sets the notation up beside the work of understanding the call: on two processors it costs nobody any time. */
final class WarmUp {
	private WarmUp() {
	}

	/** Begins, if the call looks as if books were to be read. */
	static void begin(String[] args) {
		if (args.length < 2) {
			return;
		}
		Thread thread = new Thread(Notation::get, "notation");
		thread.setDaemon(true);
		// What fails here fails again where it is needed, and is told there.
		thread.setUncaughtExceptionHandler((t, e) -> System.getLogger(WarmUp.class.getName())
				.log(System.Logger.Level.DEBUG, "The notation could not be set up early", e));
		thread.start();
	}
}
