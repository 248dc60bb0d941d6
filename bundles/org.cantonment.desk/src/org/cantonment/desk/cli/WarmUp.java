package org.cantonment.desk.cli;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.notation.Document;
import org.cantonment.notation.Notation;
import org.cantonment.notation.parser.antlr.internal.InternalBookLexer;
import org.cantonment.notation.parser.antlr.internal.InternalBookParser;
import org.cantonment.rules.Judge;
import org.cantonment.rules.compile.RulingCompiler;

/** Sets the notation up beside the work of understanding the call: on two processors it costs nobody any time. */
final class WarmUp {
    private WarmUp() {
    }

    /** Begins, if the call looks as if books were to be read. */
    static void begin(String[] args) {
        if (args.length >= 2) {
            beside("notation", Notation::get);
            beside("parser", () -> load(InternalBookLexer.class, InternalBookParser.class, Judge.class,
                    RulingCompiler.class, Document.class, CampaignDesk.class));
        }
    }

    private static void beside(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        // What fails here fails again where it is needed, and is told there.
        thread.setUncaughtExceptionHandler((t, e) -> System.getLogger(WarmUp.class.getName())
                .log(System.Logger.Level.DEBUG, "Nothing could be set up early", e));
        thread.start();
    }

    // The parser's tables are large; filling them takes as long as reading a book.
    private static void load(Class<?>... classes) {
        for (Class<?> each : classes) {
            try {
                Class.forName(each.getName(), true, each.getClassLoader());
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
