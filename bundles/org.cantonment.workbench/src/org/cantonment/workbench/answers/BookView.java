package org.cantonment.workbench.answers;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.turnout.Row;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.editor.api.Severity;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.cantonment.workbench.answers.BookAnswer.Aside;
import org.eclipse.core.resources.IFile;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ide.ResourceUtil;
import org.eclipse.ui.part.ViewPart;

/** A view that answers one question about the list or shelf that is edited. Shows what a job found; computes nothing. */
public abstract class BookView extends ViewPart {

    private static final Set<String> ENDINGS = Set.of("list", "shelf");

    private final EditorWatch editors = new EditorWatch(this::edited);
    private final String id;
    private final List<Column> columns;
    private final String nothing;
    private BookSource source;
    private AnswerTree tree;
    private TopLine line;
    private Button reply;
    private BookAnswer shown;
    private Button side;
    private boolean aside;

    /**
     * A view.
     *
     * @param id its id, which is its job's family, too
     * @param columns from left to right
     * @param nothing what is said where there is nothing to ask about
     */
    protected BookView(String id, List<Column> columns, String nothing) {
        this.id = id;
        this.columns = columns;
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
     * @param aside whether the other side is shown now
     * @return its label; empty if this view has one side only
     */
    protected String sideLabel(boolean aside) {
        return "";
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        parent.setLayout(layout);
        top(parent);
        Composite area = new Composite(parent, SWT.NONE);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        tree = new AnswerTree(area, columns);
        source = new BookSource(getPartName(), nothing, id, this::answer,
                newer -> parent.getDisplay().asyncExec(() -> show(newer)));
        getSite().getPage().addPartListener(editors);
        edited(getSite().getPage().getActiveEditor());
        show(shown);
    }

    private void top(Composite parent) {
        line = new TopLine(parent);
        if (!sideLabel(false).isEmpty()) {
            side = line.button(sideLabel(false), "Shows the answer from the other side.", this::turn);
        }
        reply = line.button("Copy a &reply", "Copies the answer, short enough for a chat.", this::copyReply);
    }

    private void edited(IEditorPart editor) {
        IFile file = editor == null ? null : ResourceUtil.getFile(editor.getEditorInput());
        if (file != null && ENDINGS.contains(String.valueOf(file.getFileExtension()))) {
            source.ask(file);
        } else if (editor == null) {
            source.ask(null);
        }
    }

    private void show(BookAnswer newer) {
        if (tree.tree().isDisposed()) {
            return;
        }
        shown = newer;
        Optional<Aside> other = aside ? newer.aside() : Optional.empty();
        line.say(other.map(Aside::heading).orElse(newer.heading()));
        tree.head(other.map(Aside::columns).orElse(columns.stream().map(Column::title).toList()));
        tree.show(other.map(Aside::nodes).orElse(newer.nodes()));
        line.let(reply, !other.map(Aside::reply).orElse(newer.reply()).isEmpty());
        if (side != null) {
            side.setText(sideLabel(other.isPresent()));
            side.requestLayout();
            line.let(side, newer.aside().isPresent());
        }
    }

    private void turn() {
        aside = !aside;
        show(shown);
    }

    /** The rows as they are shown. */
    public List<AnswerNode> rows() {
        return tree.nodes();
    }

    /** What stands above the rows. */
    public String heading() {
        return line.said();
    }

    /**
     * Rows of the desk; where something is short a sign stands before them.
     *
     * @param rows the rows
     * @return the same for a tree
     */
    protected static List<AnswerNode> nodes(List<Row> rows) {
        return rows.stream().map(row -> new AnswerNode(row.cells(), row.lacking() ? Optional.of(Severity.CAUTION)
                : Optional.empty(), Optional.empty(), nodes(row.parts()))).toList();
    }

    private void copyReply() {
        Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
        clipboard.setContents(new Object[] { (aside ? shown.aside() : Optional.<Aside>empty()).map(Aside::reply)
                .orElse(shown.reply()) }, new Transfer[] { TextTransfer.getInstance() });
        clipboard.dispose();
    }

    @Override
    public void setFocus() {
        tree.tree().setFocus();
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(editors);
        if (source != null) {
            source.dispose();
        }
        super.dispose();
    }
}
