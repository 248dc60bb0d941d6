package org.cantonment.workbench.eras;

import java.util.List;
import java.util.Set;

import org.cantonment.desk.eras.ShelfRows;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.text.TextChanges;
import org.cantonment.workbench.answers.AnswerNode;
import org.cantonment.workbench.answers.AnswerTree;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.cantonment.workbench.answers.EditorWatch;
import org.cantonment.workbench.answers.TopLine;
import org.cantonment.workbench.eras.EraSource.Shown;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.ide.ResourceUtil;
import org.eclipse.ui.part.ViewPart;

/**
 * How the list that is edited stands in every era of its rules, and the least change that makes it legal there; or what the
 * shelf that is edited can field in each era.
 */
public final class ErasView extends ViewPart {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.eras";

    private static final List<Column> COLUMNS = List.of(new Column("Era", 38), new Column("Verdict", 14),
            new Column("Points", 23), new Column("Moved", 22), new Column("What is wrong, and what to do", 74));

    private static final Set<String> ENDINGS = Set.of("list", "shelf");

    private final EditorWatch editors = new EditorWatch(this::edited);
    private EraSource source;
    private AnswerTree tree;
    private TopLine line;
    private Button make;
    private Button more;
    private Button reply;
    private Button stop;
    private boolean looking;
    private Shown shown = Shown.nothing(null, "");

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
        tree = new AnswerTree(area, COLUMNS);
        tree.tree().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> enable()));
        source = new EraSource(newer -> parent.getDisplay().asyncExec(() -> show(newer)));
        getSite().getPage().addPartListener(editors);
        show(Shown.nothing(null, EraSource.NOTHING));
        edited(getSite().getPage().getActiveEditor());
    }

    private void top(Composite parent) {
        line = new TopLine(parent);
        make = line.button("&Make this change", "Writes the change into the list; one undo takes it back.", this::make);
        more = line.button("Next &best", "Looks for one change more in each era.", () -> {
            looking(true);
            source.askMore();
        });
        reply = line.button("Copy a &reply", "Copies the answer, short enough for a chat.", this::copyReply);
        stop = line.button("&Stop", "Gives the search up; what is shown stays.", () -> source.stop());
    }

    private void edited(IEditorPart editor) {
        IFile file = editor == null ? null : ResourceUtil.getFile(editor.getEditorInput());
        if (file != null && ENDINGS.contains(String.valueOf(file.getFileExtension()))) {
            if (!file.equals(source.file())) {
                show(Shown.nothing(file, "Looking into " + file.getName() + "\u2026"));
                looking(true);
            }
            source.ask(file);
        } else if (editor == null) {
            source.ask(null);
        }
    }

    private void show(Shown newer) {
        if (tree.tree().isDisposed()) {
            return;
        }
        looking = false;
        shown = newer;
        line.say(newer.heading());
        tree.head(newer.shelf() ? ShelfRows.COLUMNS : COLUMNS.stream().map(Column::title).toList());
        tree.show(newer.nodes());
        enable();
    }

    private void looking(boolean now) {
        looking = now;
        enable();
    }

    private void enable() {
        line.let(stop, looking);
        line.let(make, tree.meant(EraChoice.class).filter(choice -> !choice.changes().isEmpty()).isPresent());
        line.let(more, !shown.nodes().isEmpty() && !shown.shelf());
        line.let(reply, !shown.reply().isEmpty());
    }

    /** The rows as they are shown. */
    public List<AnswerNode> rows() {
        return tree.nodes();
    }

    private void make() {
        tree.meant(EraChoice.class).ifPresent(choice -> {
            try {
                IEditorPart editor = IDE.openEditor(getSite().getPage(), shown.file());
                DocumentModel model = DocumentModels.all().of(shown.file()).orElse(null);
                if (editor != null && model != null && model.document().get().equals(shown.text())) {
                    TextChanges.apply(model.document(), choice.changes());
                } else {
                    tell("The list has changed meanwhile; look again.");
                }
            } catch (PartInitException | BadLocationException failure) {
                ILog.of(ErasView.class).error("A change could not be made in " + shown.file().getFullPath(), failure);
            }
        });
    }

    private void tell(String message) {
        getViewSite().getActionBars().getStatusLineManager().setErrorMessage(message);
    }

    private void copyReply() {
        Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
        clipboard.setContents(new Object[] { shown.reply() }, new Transfer[] { TextTransfer.getInstance() });
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
