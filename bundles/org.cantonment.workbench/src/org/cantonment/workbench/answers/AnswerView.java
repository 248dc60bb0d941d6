package org.cantonment.workbench.answers;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.desk.turnout.Row;
import org.cantonment.editor.api.Severity;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.eclipse.core.resources.IFile;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.ide.ResourceUtil;
import org.eclipse.ui.part.ViewPart;

/**
 * A view that shows an answer: a line above that says what it is and has buttons for what can be done with it, and rows
 * below. Shows what a job found; computes nothing.
 */
public abstract class AnswerView extends ViewPart {

    private static final Set<String> ENDINGS = Set.of("list", "shelf");

    private final EditorWatch editors = new EditorWatch(this::edited);
    private final IPartListener2 sight = new IPartListener2() {
        @Override
        public void partVisible(IWorkbenchPartReference part) {
            if (part.getPart(false) == AnswerView.this && !seen) {
                seen = true;
                wake();
            }
        }

        @Override
        public void partHidden(IWorkbenchPartReference part) {
            if (part.getPart(false) == AnswerView.this) {
                seen = false;
            }
        }
    };
    private final List<Column> columns;
    private volatile boolean seen = true;
    private AnswerTree tree;
    private TopLine line;

    /**
     * A view.
     *
     * @param columns from left to right
     */
    protected AnswerView(List<Column> columns) {
        this.columns = List.copyOf(columns);
    }

    @Override
    public final void createPartControl(Composite parent) {
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        parent.setLayout(layout);
        line = new TopLine(parent);
        buttons(line);
        between(parent);
        Composite area = new Composite(parent, SWT.NONE);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        tree = new AnswerTree(area, columns);
        begin(parent);
    }

    /**
     * Puts buttons into the line above.
     *
     * @param top the line
     */
    protected abstract void buttons(TopLine top);

    /**
     * Puts something between the line above and the rows; nothing unless a view has something to put there.
     *
     * @param parent an area with a grid layout of one column
     */
    protected void between(Composite parent) {
        // nothing
    }

    /**
     * Begins to ask, once everything is there to show an answer.
     *
     * @param parent what all of it stands in
     */
    protected abstract void begin(Composite parent);

    /** Tells from now on, and at once, which list or shelf is edited, and when the view comes to sight again. */
    protected final void watchEditors() {
        getSite().getPage().addPartListener(sight);
        getSite().getPage().addPartListener(editors);
        edited(getSite().getPage().getActiveEditor());
    }

    private void edited(IEditorPart editor) {
        IFile file = editor == null ? null : ResourceUtil.getFile(editor.getEditorInput());
        if (file != null && ENDINGS.contains(String.valueOf(file.getFileExtension()))) {
            edited(file);
        } else if (editor == null) {
            edited((IFile) null);
        }
    }

    /**
     * A list or a shelf came to the front; for a view that watches the editors.
     *
     * @param file its file; null once the last editor is closed
     */
    protected void edited(IFile file) {
        // nothing
    }

    /** Whether anybody can see the view; any thread may ask. Behind another tab there is nothing to be reckoned for it. */
    protected final boolean seen() {
        return seen;
    }

    /** The view came to sight again: what was left undone meanwhile is done now. */
    protected void wake() {
        // nothing
    }

    /** The rows. */
    protected final AnswerTree tree() {
        return tree;
    }

    /** The line above. */
    protected final TopLine line() {
        return line;
    }

    /** Whether there is still something to show an answer in. */
    protected final boolean open() {
        return !tree.tree().isDisposed();
    }

    /** The rows as they are shown. */
    public final List<AnswerNode> rows() {
        return tree.nodes();
    }

    /** What stands above the rows. */
    public final String heading() {
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

    /**
     * Copies a text, to be pasted into a chat.
     *
     * @param text the text
     */
    protected final void copy(String text) {
        Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
        clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
        clipboard.dispose();
    }

    @Override
    public final void setFocus() {
        tree.tree().setFocus();
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(sight);
        getSite().getPage().removePartListener(editors);
        super.dispose();
    }
}
