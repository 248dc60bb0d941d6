package org.cantonment.workbench.answers;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.eclipse.core.resources.IFile;

/** Asks one question about a list or a shelf. */
final class BookSource extends AnswerSource<BookSource.Question, BookAnswer> {

    /** Answers about a list or a shelf. */
    @FunctionalInterface
    interface Question {
        /** @throws Cancelled if the token says so */
        BookAnswer answer(Meanings meanings, Object book, CancelToken cancel, Consumer<BookAnswer> meanwhile);
    }

    private final String nothing;

    /** @param nothing what is said where there is nothing to ask about */
    BookSource(String name, String nothing, Object family, Question question, BooleanSupplier seen,
            Consumer<BookAnswer> taker) {
        super(name, family, question, seen, taker);
        this.nothing = nothing;
    }

    @Override
    protected BookAnswer nothing() {
        return BookAnswer.nothing(nothing);
    }

    @Override
    protected BookAnswer stopped(IFile now) {
        return nothing();
    }

    @Override
    protected BookAnswer answer(Grounds<Question> grounds, CancelToken cancel, Progress progress,
            Consumer<BookAnswer> meanwhile) {
        return grounds.book().map(book -> grounds.wanted().answer(grounds.snapshot().meanings(), book, cancel, meanwhile))
                .orElseGet(() -> BookAnswer.nothing(grounds.file().getName() + " cannot be read yet."));
    }
}
