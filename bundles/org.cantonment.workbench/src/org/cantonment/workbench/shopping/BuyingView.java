package org.cantonment.workbench.shopping;

import java.util.List;
import java.util.Optional;

import org.cantonment.desk.shopping.BuyRows;
import org.cantonment.desk.shopping.Counter.Look;
import org.cantonment.desk.shopping.Counter.Wish;
import org.cantonment.workbench.answers.AnswerTree.Column;
import org.cantonment.workbench.answers.AnswerView;
import org.cantonment.workbench.answers.TopLine;
import org.cantonment.workbench.shopping.BuyingSource.Shown;
import org.eclipse.core.resources.IFile;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

/**
 * What the player whose list or shelf is edited should buy so that lists can be fielded, at least cost, and what a box is worth
 * to him. Shows what a job found; computes nothing.
 */
public final class BuyingView extends AnswerView {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.buying";

    private static final List<Column> COLUMNS = List.of(new Column(BuyRows.COLUMNS.get(0), 42),
            new Column(BuyRows.COLUMNS.get(1), 14), new Column(BuyRows.COLUMNS.get(2), 90));

    private BuyingSource source;
    private BuyingBar bar;
    private Button stop;
    private Button more;
    private Button write;
    private Button reply;
    private Shown shown = Shown.nothing(BuyingSource.NOTHING);

    /** A view that shows nothing yet. */
    public BuyingView() {
        super(COLUMNS);
    }

    @Override
    protected void buttons(TopLine top) {
        stop = top.button("&Stop", "Ends the search and shows the best that was found.", () -> source.stop());
        more = top.button("Next &best", "Looks for one plan more.", () -> bar.more());
        write = top.button("Wr&ite lists", "Writes the lists that were composed into files of their own.", this::write);
        reply = top.button("Copy a &reply", "Copies the answer, short enough for a chat.",
                () -> copy(shown.look().map(Look::reply).orElse("")));
    }

    @Override
    protected void between(Composite parent) {
        bar = new BuyingBar(parent, this::wished);
    }

    @Override
    protected void begin(Composite parent) {
        source = new BuyingSource(bar.wish().orElseThrow(), this::seen,
                newer -> parent.getDisplay().asyncExec(() -> show(newer)));
        watchEditors();
        show(shown);
    }

    private void write() {
        IFile file = source.file();
        Display display = getSite().getShell().getDisplay();
        shown.look().ifPresent(look -> new ListWriting(file.getProject(), look.books(), said -> display.asyncExec(() ->
                getViewSite().getActionBars().getStatusLineManager().setMessage(said))).schedule());
    }

    private void wished() {
        if (source != null) {
            Optional<Wish> wish = bar.wish();
            wish.ifPresentOrElse(source::want, () -> line().say("A day is written like 2031-04-15."));
        }
    }

    @Override
    protected void wake() {
        source.wake();
    }

    @Override
    protected void edited(IFile file) {
        source.ask(file);
    }

    private void show(Shown newer) {
        if (!open()) {
            return;
        }
        shown = newer;
        line().say(newer.heading());
        bar.offer(newer.whose(), newer.lists(), newer.boxes());
        if (!newer.busy()) {
            tree().show(newer.look().map(Look::rows).map(AnswerView::nodes).orElse(List.of()));
        }
        line().let(stop, newer.busy());
        line().let(more, !newer.busy() && newer.look().isPresent());
        line().let(write, newer.look().filter(look -> !look.books().isEmpty()).isPresent());
        line().let(reply, newer.look().filter(look -> !look.reply().isEmpty()).isPresent());
        wished();
    }

    @Override
    public void dispose() {
        if (source != null) {
            source.dispose();
        }
        super.dispose();
    }
}
