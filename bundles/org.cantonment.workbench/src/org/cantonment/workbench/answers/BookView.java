package org.cantonment.workbench.answers;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.cantonment.workbench.answers.BookAnswer.Aside;
import org.eclipse.core.resources.IFile;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A view that answers one question about the list or shelf that is edited. */
public abstract class BookView extends AnswerView {

    private final String id;
    private final List<String> titles;
    private final String nothing;
    private BookSource source;
    private Button reply;
    private Button side;
    private BookAnswer shown;
    private boolean aside;

    /**
     * A view.
     *
     * @param id its id, which is its job's family, too
     * @param columns from left to right
     * @param nothing what is said where there is nothing to ask about
     */
    protected BookView(String id, List<Column> columns, String nothing) {
        super(columns);
        this.id = id;
        this.titles = columns.stream().map(Column::title).toList();
        this.nothing = nothing;
        this.shown = BookAnswer.nothing(nothing);
    }

    /**
     * Answers; called on a job's thread.
     *
     * @param meanings what all books mean
     * @param book a list or a shelf of them
     * @param cancel asked often
     * @return the answer
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    protected abstract BookAnswer answer(Meanings meanings, Object book, CancelToken cancel);

    /**
     * Answers in steps; called on a job's thread.
     *
     * @param meanings what all books mean
     * @param book a list or a shelf of them
     * @param cancel asked often
     * @param meanwhile is told what is known so far
     * @return the answer
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    protected BookAnswer answer(Meanings meanings, Object book, CancelToken cancel, Consumer<BookAnswer> meanwhile) {
        return answer(meanings, book, cancel);
    }

    /**
     * The button that shows the other side of an answer.
     *
     * @param other whether the other side is shown now
     * @return its label; empty if this view has one side only
     */
    protected String sideLabel(boolean other) {
        return "";
    }

    @Override
    protected void buttons(TopLine top) {
        if (!sideLabel(false).isEmpty()) {
            side = top.button(sideLabel(false), "Shows the answer from the other side.", this::turn);
        }
        reply = top.button("Copy a &reply", "Copies the answer, short enough for a chat.",
                () -> copy(other().map(Aside::reply).orElse(shown.reply())));
    }

    private void turn() {
        aside = !aside;
        show(shown);
    }

    private Optional<Aside> other() {
        return aside ? shown.aside() : Optional.empty();
    }

    @Override
    protected void begin(Composite parent) {
        source = new BookSource(getPartName(), nothing, id, this::answer, this::seen,
                newer -> parent.getDisplay().asyncExec(() -> show(newer)));
        watchEditors();
        show(shown);
    }

    @Override
    protected void wake() {
        source.wake();
    }

    @Override
    protected void edited(IFile file) {
        source.ask(file);
    }

    private void show(BookAnswer newer) {
        if (open()) {
            shown = newer;
            line().say(other().map(Aside::heading).orElse(newer.heading()));
            tree().head(other().map(Aside::columns).orElse(titles));
            tree().show(other().map(Aside::nodes).orElse(newer.nodes()));
            line().let(reply, !other().map(Aside::reply).orElse(newer.reply()).isEmpty());
            if (side != null) {
                side.setText(sideLabel(other().isPresent()));
                side.requestLayout();
                line().let(side, newer.aside().isPresent());
            }
        }
    }

    @Override
    public void dispose() {
        if (source != null) {
            source.dispose();
        }
        super.dispose();
    }
}
