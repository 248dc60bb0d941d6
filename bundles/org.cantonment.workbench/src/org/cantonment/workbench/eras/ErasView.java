package org.cantonment.workbench.eras;

import java.util.List;

import org.cantonment.desk.eras.ShelfRows;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.text.TextChanges;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.cantonment.workbench.answers.AnswerView;
import org.cantonment.workbench.answers.TopLine;
import org.cantonment.workbench.eras.EraSource.Shown;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;

/**
 * How the list that is edited stands in every era of its rules, and the least change that makes it legal there; or what the
 * shelf that is edited can field in each era.
 */
public final class ErasView extends AnswerView {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.eras";

    private static final List<Column> COLUMNS = List.of(new Column("Era", 38), new Column("Verdict", 14),
            new Column("Points", 23), new Column("Moved", 22), new Column("What is wrong, and what to do", 74));

    private EraSource source;
    private Button make;
    private Button more;
    private Button reply;
    private Button stop;
    private boolean looking;
    private Shown shown = Shown.nothing(null, "");

    /** A view that shows nothing yet. */
    public ErasView() {
        super(COLUMNS);
    }

    @Override
    protected void buttons(TopLine top) {
        make = top.button("&Make this change", "Writes the change into the list; one undo takes it back.", this::make);
        more = top.button("Next &best", "Looks for one change more in each era.", () -> {
            looking(true);
            source.askMore();
        });
        reply = top.button("Copy a &reply", "Copies the answer, short enough for a chat.", () -> copy(shown.reply()));
        stop = top.button("&Stop", "Gives the search up; what is shown stays.", () -> source.stop());
    }

    @Override
    protected void begin(Composite parent) {
        tree().tree().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> enable()));
        source = new EraSource(this::seen, newer -> parent.getDisplay().asyncExec(() -> show(newer)));
        show(Shown.nothing(null, EraSource.NOTHING));
        watchEditors();
    }

    @Override
    protected void wake() {
        source.wake();
    }

    @Override
    protected void edited(IFile file) {
        if (file != null && !file.equals(source.file())) {
            show(Shown.nothing(file, "Looking into " + file.getName() + "\u2026"));
            looking(true);
        }
        source.about(file);
    }

    private void show(Shown newer) {
        if (open()) {
            looking = false;
            shown = newer;
            line().say(newer.heading());
            tree().head(newer.shelf() ? ShelfRows.COLUMNS : COLUMNS.stream().map(Column::title).toList());
            tree().show(newer.nodes());
            enable();
        }
    }

    private void looking(boolean now) {
        looking = now;
        enable();
    }

    private void enable() {
        line().let(stop, looking);
        line().let(make, tree().meant(EraChoice.class).filter(choice -> !choice.changes().isEmpty()).isPresent());
        line().let(more, !shown.nodes().isEmpty() && !shown.shelf());
        line().let(reply, !shown.reply().isEmpty());
    }

    private void make() {
        tree().meant(EraChoice.class).ifPresent(choice -> {
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

    @Override
    public void dispose() {
        if (source != null) {
            source.dispose();
        }
        super.dispose();
    }
}
