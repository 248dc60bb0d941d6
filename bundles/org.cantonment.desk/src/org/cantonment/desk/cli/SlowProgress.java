package org.cantonment.desk.cli;

import org.cantonment.domain.common.Progress;

/** Says how far something is, but only if it takes longer than a second. */
final class SlowProgress implements Progress {
    private static final long FIRST = 1_000_000_000L;
    private static final long AGAIN = 500_000_000L;

    private final Terminal terminal;
    private long next = System.nanoTime() + FIRST;

    SlowProgress(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public synchronized void at(long done, long of, String doing) {
        long now = System.nanoTime();
        if (now - next >= 0) {
            next = now + AGAIN;
            terminal.say(doing + (of > 0 ? " " + done + " of " + of : ""));
        }
    }
}
