package org.cantonment.workbench.eras;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.eras.ChangeAnswer;
import org.cantonment.desk.eras.Changes;
import org.cantonment.desk.eras.ErasText;
import org.cantonment.desk.eras.ListEras;
import org.cantonment.desk.eras.Owned;
import org.cantonment.desk.eras.ShelfAnswer;
import org.cantonment.desk.eras.ShelfRows;
import org.cantonment.desk.eras.ShelfText;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.editor.api.TextChange;
import org.cantonment.rules.guest.Guests;
import org.cantonment.workbench.answers.AnswerNode;
import org.cantonment.workbench.answers.AnswerSource;
import org.cantonment.workbench.guests.GuestHouse;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.core.resources.IFile;

/** Asks how a list stands in every era, as it is in its editor, or what a shelf can field there. */
final class EraSource extends AnswerSource<Integer, EraSource.Shown> {

    /**
     * What a job hands to the view.
     *
     * @param file the list; null if there is none
     * @param text its text, in which the changes are counted
     * @param shelf whether it is of a shelf
     * @param heading what it is, in words
     * @param reply the answer for a chat
     * @param nodes the rows
     */
    record Shown(IFile file, String text, boolean shelf, String heading, String reply, List<AnswerNode> nodes) {
        static Shown nothing(IFile file, String why) {
            return new Shown(file, "", false, why, "", List.of());
        }
    }

    /** What an answer hangs on beside the meaning: the text in which changes are counted, and the checks of others. */
    private record Asked(String text, long guests) {
    }

    /** What is said where there is nothing to look into. */
    static final String NOTHING = "Open a list to see how it stands in every era, or a shelf to see what it can field.";

    private static final int MOST_MORE = 9;

    /** What is said when a search was given up. */
    static final String STOPPED = "Stopped. It is looked into again once something changes.";

    /** @param seen whether anybody sees what the taker is told */
    EraSource(BooleanSupplier seen, Consumer<Shown> taker) {
        super("Looking into eras", ErasView.ID, 0, seen, taker);
    }

    /** Asks about a file, for the least changes alone at first. */
    void about(IFile newer) {
        ask(newer, 0);
    }

    /** Asks for one change more in each era. */
    void askMore() {
        want(Math.min(MOST_MORE, wanted() + 1));
    }

    @Override
    protected Shown nothing() {
        return Shown.nothing(null, NOTHING);
    }

    @Override
    protected Shown stopped(IFile now) {
        return Shown.nothing(now, STOPPED);
    }

    @Override
    protected Object more(CampaignDesk desk, Path path) {
        return new Asked(desk.text(path).orElse(""), guests().version());
    }

    private static Guests guests() {
        return GuestHouse.instance().guests();
    }

    @Override
    protected Shown answer(Grounds<Integer> grounds, CancelToken cancel, Progress progress, Consumer<Shown> meanwhile)
            throws InterruptedException, ExecutionException {
        Object book = grounds.book().orElse(null);
        try {
            if (book instanceof Shelf shelf) {
                return shelf(grounds, ShelfAnswer.of(grounds.snapshot().meanings(), shelf, cancel, progress));
            }
            return book instanceof ForceList list ? list(grounds, list, cancel, progress)
                    : Shown.nothing(grounds.file(), grounds.file().getName() + " cannot be read yet.");
        } catch (ListEras.Unclear unclear) {
            return Shown.nothing(grounds.file(), unclear.getMessage());
        }
    }

    private static String text(Grounds<Integer> grounds) {
        return ((Asked) grounds.more()).text();
    }

    private static Shown shelf(Grounds<Integer> grounds, ShelfAnswer answer) {
        ShelfText text = new ShelfText(answer);
        return new Shown(grounds.file(), text(grounds), true, text.heading(), text.reply(),
                EraNodes.of(ShelfRows.of(answer)));
    }

    private static Shown list(Grounds<Integer> grounds, ForceList list, CancelToken cancel, Progress progress)
            throws InterruptedException, ExecutionException, ListEras.Unclear {
        Meanings meanings = grounds.snapshot().meanings();
        ListEras answer = ListEras.of(meanings, guests(), list, Owned.of(meanings, list), grounds.wanted(), cancel, progress);
        Map<ChangeAnswer, List<TextChange>> edits = DeskLink.instance()
                .ask(grounds.file().getProject(), desk -> edits(desk, grounds, answer)).get();
        String own = (answer.owned().known() ? "" : " " + answer.owned().why())
                + answer.unasked().stream().map(why -> " " + why).collect(Collectors.joining());
        return new Shown(grounds.file(), text(grounds), false, answer.title() + " (" + grounds.file().getName() + ")." + own,
                ErasText.reply(answer), EraNodes.of(answer, change -> edits.getOrDefault(change, List.of())));
    }

    // Only if the text still means what was asked about can its changes be written.
    private static Map<ChangeAnswer, List<TextChange>> edits(CampaignDesk desk, Grounds<Integer> grounds, ListEras answer) {
        Map<ChangeAnswer, List<TextChange>> edits = new HashMap<>();
        desk.document(grounds.path()).filter(document -> document.text().equals(text(grounds))
                && document.meaning(Object.class).equals(grounds.book())).ifPresent(document -> answer.eras().stream()
                        .flatMap(era -> List.of(era.atLarge(), era.owned()).stream()).flatMap(Optional::stream)
                        .map(Changes::answers).flatMap(List::stream).forEach(change ->
                                edits.put(change, DeskLink.changes(document.write(change.mend())))));
        return edits;
    }
}
