package org.cantonment.workbench.answers;

import java.util.List;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.eclipse.core.resources.IFile;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A view that answers one question about the list or shelf that is edited. */
public abstract class BookView extends AnswerView {

    private final String id;
    private final String nothing;
    private BookSource source;
    private Button reply;
    private BookAnswer shown;

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

    @Override
    protected void buttons(TopLine top) {
        reply = top.button("Copy a &reply", "Copies the answer, short enough for a chat.", () -> copy(shown.reply()));
    }

    @Override
    protected void begin(Composite parent) {
        source = new BookSource(getPartName(), nothing, id, this::answer,
                newer -> parent.getDisplay().asyncExec(() -> show(newer)));
        watchEditors();
        show(shown);
    }

    @Override
    protected void edited(IFile file) {
        source.ask(file);
    }

    private void show(BookAnswer newer) {
        if (open()) {
            shown = newer;
            line().say(newer.heading());
            tree().show(newer.nodes());
            line().let(reply, !newer.reply().isEmpty());
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
