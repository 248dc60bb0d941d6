package org.cantonment.workbench.adopting;

import java.util.List;

import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.text.OtherFile;
import org.cantonment.editor.text.Places;
import org.cantonment.workbench.adopting.AdoptingJob.Shown;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.cantonment.workbench.answers.AnswerView;
import org.cantonment.workbench.answers.TopLine;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Who becomes illegal, who legal, whose totals change, if the book of rules in the editor were adopted as it is there. */
public final class AdoptingView extends AnswerView {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.adopting";

    private static final String START = "In a book of rules, choose 'Before adopting' from the menu Navigate.";
    private static final List<Column> COLUMNS = List.of(new Column("List", 100), new Column("Points", 18),
            new Column("Book", 24));

    private final OwnDesk own = new OwnDesk();
    private Button again;
    private Button stop;
    private Button adopt;
    private IFile file;
    private Job job;
    private Shown shown = Shown.nothing(START);

    /** A view that shows nothing yet. */
    public AdoptingView() {
        super(COLUMNS);
    }

    @Override
    protected void buttons(TopLine top) {
        again = top.button("Look aga&in", "Compares with the saved campaign once more.", () -> look(file));
        stop = top.button("&Stop", "Gives the comparison up.", () -> job.cancel());
        adopt = top.button("&Play it", "Writes into the campaign that it plays this book; one undo takes it back.",
                this::adopt);
    }

    @Override
    protected void begin(Composite parent) {
        tree().tree().addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> openPlace()));
        show(shown);
    }

    /**
     * Compares the campaign as it is saved with what it were if a book had the text that its editor shows. Screen's thread
     * only.
     *
     * @param rules an open book of rules
     */
    public void look(IFile rules) {
        DocumentModel model = DocumentModels.all().of(rules).orElse(null);
        if (model == null) {
            show(Shown.nothing("Open " + rules.getName() + " to compare it."));
            return;
        }
        if (job != null) {
            job.cancel();
        }
        file = rules;
        Job[] mine = { null };
        mine[0] = new AdoptingJob(own, rules, model.document().get(), newer -> tree().tree().getDisplay().asyncExec(() -> {
            if (job == mine[0]) {
                show(newer);
            }
        }));
        job = mine[0];
        show(Shown.looking("Looking\u2026"));
        job.schedule();
    }

    private void show(Shown newer) {
        if (!open()) {
            return;
        }
        shown = newer;
        line().say(newer.heading());
        tree().show(newer.nodes());
        line().let(again, file != null);
        line().let(stop, newer.looking());
        line().let(adopt, !newer.adopting().isEmpty());
    }

    private void openPlace() {
        tree().meant(AdoptingNodes.Place.class)
                .ifPresent(place -> Places.openLine(place.file().toUri().toString(), place.line()));
    }

    private void adopt() {
        shown.adopting().forEach(one -> OtherFile.change(one.where(), one.changes()));
        line().let(adopt, false); // it has been said; whoever undoes it looks again
    }

    @Override
    public void dispose() {
        if (job != null) {
            job.cancel();
        }
        super.dispose();
    }
}
