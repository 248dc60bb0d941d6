package org.cantonment.desk.judging;

import java.lang.System.Logger;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.Trials;

/** The examples of rule books, played once and again only when the book or one below it has changed. */
final class Played {
    private static final Logger LOG = System.getLogger(Played.class.getName());

    /** What an earlier play stood on, compared by identity, and what came of it. */
    private record Play(List<RuleSet> books, List<Finding> findings) {
        boolean standsOn(List<RuleSet> now) {
            if (now.size() != books.size()) {
                return false;
            }
            for (int i = 0; i < now.size(); i++) {
                if (now.get(i) != books.get(i)) {
                    return false;
                }
            }
            return true;
        }
    }

    private final Map<RuleSet, Play> plays = new IdentityHashMap<>();

    List<Finding> of(RuleSet book, Meanings meanings, CancelToken cancel) {
        if (book.examples().isEmpty()) {
            return List.of();
        }
        List<RuleSet> books = meanings.closure(List.of(book.id()));
        Play known = plays.get(book);
        if (known == null || !known.standsOn(books)) {
            known = new Play(books, play(book, books, cancel));
            plays.put(book, known);
        }
        return known.findings();
    }

    private static List<Finding> play(RuleSet book, List<RuleSet> books, CancelToken cancel) {
        try {
            return Trials.play(book, books, cancel);
        } catch (Cancelled e) {
            throw e;
        } catch (RuntimeException | StackOverflowError e) {
            LOG.log(Logger.Level.ERROR, "The examples of a book could not be played: " + book.id(), e);
            return List.of(Finding.of(Judging.FAILED, Severity.BREACH, book.id(),
                    "The examples of this book could not be played, by a fault of the program and not of yours."));
        }
    }

    /** Forgets the plays of all books but these. */
    void keepOnly(List<RuleSet> books) {
        Map<RuleSet, Play> kept = new IdentityHashMap<>();
        for (RuleSet book : books) {
            Play play = plays.get(book);
            if (play != null) {
                kept.put(book, play);
            }
        }
        plays.clear();
        plays.putAll(kept);
    }
}
