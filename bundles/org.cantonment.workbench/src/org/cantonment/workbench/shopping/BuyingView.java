package org.cantonment.workbench.shopping;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.desk.shopping.BuyRows;
import org.cantonment.desk.shopping.Counter.Look;
import org.cantonment.desk.shopping.Counter.Wish;
import org.cantonment.desk.turnout.Row;
import org.cantonment.editor.api.Severity;
import org.cantonment.workbench.answers.AnswerNode;
import org.cantonment.workbench.answers.AnswerTree;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.cantonment.workbench.answers.EditorWatch;
import org.cantonment.workbench.answers.TopLine;
import org.cantonment.workbench.shopping.BuyingSource.Shown;
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

/**
 * What the player whose list or shelf is edited should buy so that lists can be fielded, at least cost, and what a box is worth
 * to him. Shows what a job found; computes nothing.
 */
public final class BuyingView extends ViewPart {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.buying";

    private static final List<Column> COLUMNS = List.of(new Column(BuyRows.COLUMNS.get(0), 34),
            new Column(BuyRows.COLUMNS.get(1), 14), new Column(BuyRows.COLUMNS.get(2), 90));
    private static final Set<String> ENDINGS = Set.of("list", "shelf");

    private final EditorWatch editors = new EditorWatch(this::edited);
    private BuyingSource source;
    private BuyingBar bar;
    private AnswerTree tree;
    private TopLine line;
    private Button stop;
    private Button more;
    private Button reply;
    private Shown shown = Shown.nothing(BuyingSource.NOTHING);

    @Override
    public void createPartControl(Composite parent) {
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        parent.setLayout(layout);
        top(parent);
        bar = new BuyingBar(parent, this::wished);
        Composite area = new Composite(parent, SWT.NONE);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        tree = new AnswerTree(area, COLUMNS);
        source = new BuyingSource(bar.wish().orElseThrow(), newer -> parent.getDisplay().asyncExec(() -> show(newer)));
        getSite().getPage().addPartListener(editors);
        edited(getSite().getPage().getActiveEditor());
        show(shown);
    }

    private void top(Composite parent) {
        line = new TopLine(parent);
        stop = line.button("&Stop", "Ends the search and shows the best that was found.", () -> source.stop());
        more = line.button("Next &best", "Looks for one plan more.", () -> bar.more());
        reply = line.button("Copy a &reply", "Copies the answer, short enough for a chat.", this::copyReply);
    }

    private void wished() {
        if (source != null) {
            Optional<Wish> wish = bar.wish();
            wish.ifPresentOrElse(source::ask, () -> line.say("A day is written like 2031-04-15."));
        }
    }

    private void edited(IEditorPart editor) {
        IFile file = editor == null ? null : ResourceUtil.getFile(editor.getEditorInput());
        if (file != null && ENDINGS.contains(String.valueOf(file.getFileExtension()))) {
            source.ask(file);
        } else if (editor == null) {
            source.ask((IFile) null);
        }
    }

    private void show(Shown newer) {
        if (tree.tree().isDisposed()) {
            return;
        }
        shown = newer;
        line.say(newer.heading());
        bar.offer(newer.whose(), newer.lists(), newer.boxes());
        if (!newer.busy()) {
            tree.show(newer.look().map(Look::rows).map(BuyingView::nodes).orElse(List.of()));
        }
        line.let(stop, newer.busy());
        line.let(more, !newer.busy() && newer.look().isPresent());
        line.let(reply, newer.look().filter(look -> !look.reply().isEmpty()).isPresent());
        wished();
    }

    private static List<AnswerNode> nodes(List<Row> rows) {
        return rows.stream().map(row -> new AnswerNode(row.cells(), row.lacking() ? Optional.of(Severity.CAUTION)
                : Optional.empty(), Optional.empty(), nodes(row.parts()))).toList();
    }

    /** The rows as they are shown. */
    public List<AnswerNode> rows() {
        return tree.nodes();
    }

    /** What stands above the rows. */
    public String heading() {
        return line.said();
    }

    private void copyReply() {
        Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
        clipboard.setContents(new Object[] { shown.look().map(Look::reply).orElse("") },
                new Transfer[] { TextTransfer.getInstance() });
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
