package org.cantonment.workbench.shopping;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.shopping.Counter;
import org.cantonment.desk.shopping.Counter.Choice;
import org.cantonment.desk.shopping.Counter.Look;
import org.cantonment.desk.shopping.Counter.Wish;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.workbench.answers.AnswerSource;
import org.eclipse.core.resources.IFile;

/** Asks what to buy for whoever's list or shelf was edited last; stopping brings the best that was found until then. */
final class BuyingSource extends AnswerSource<Wish, BuyingSource.Shown> {

    /**
     * What a job hands to the view.
     *
     * @param busy whether it is still looking
     * @param look the answer; empty as long as there is none for this question
     * @param whose what can be chosen is whose; empty if nobody's
     * @param lists what lists can be chosen
     * @param boxes what boxes can be chosen
     */
    record Shown(boolean busy, String heading, Optional<Look> look, Optional<Id> whose, List<Choice> lists,
            List<Choice> boxes) {

        Shown {
            lists = List.copyOf(lists);
            boxes = List.copyOf(boxes);
        }

        static Shown nothing(String why) {
            return new Shown(false, why, Optional.empty(), Optional.empty(), List.of(), List.of());
        }
    }

    /** What is said where there is nobody to buy for. */
    static final String NOTHING = "Open a player's shelf, or one of his lists, to see what to buy next.";

    /** @param seen whether anybody sees what the taker is told */
    BuyingSource(Wish wish, BooleanSupplier seen, Consumer<Shown> taker) {
        super("Looking for what to buy", BuyingView.ID, wish, seen, taker);
        showProgress();
    }

    @Override
    protected Shown nothing() {
        return Shown.nothing(NOTHING);
    }

    @Override
    protected Shown stopped(IFile now) {
        return Shown.nothing("Stopped before anything was found.");
    }

    @Override
    protected Shown answer(Grounds<Wish> grounds, CancelToken cancel, Progress progress, Consumer<Shown> meanwhile) {
        Meanings meanings = grounds.snapshot().meanings();
        Optional<Player> player = grounds.book().flatMap(meanings::owner);
        if (player.isEmpty()) {
            return nothing();
        }
        Shown begun = new Shown(true, "Looking for what to buy…", Optional.empty(), Optional.of(player.get().id()),
                Counter.lists(meanings, player.get()), Counter.boxes(meanings));
        meanwhile.accept(begun);
        try {
            Look look = Counter.of(meanings, player.get(), grounds.wanted(), list -> grounds.snapshot().file(list)
                    .map(file -> file.getFileName().toString()).orElse(""), cancel, progress);
            return new Shown(false, look.heading(), Optional.of(look), begun.whose(), begun.lists(), begun.boxes());
        } catch (Unclear unclear) {
            return new Shown(false, unclear.getMessage(), Optional.empty(), begun.whose(), begun.lists(), begun.boxes());
        }
    }
}
