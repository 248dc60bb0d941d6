package org.cantonment.desk.eras;

import java.util.List;
import java.util.Optional;

/**
 * What was found of the changes that make a list legal in an era: such as content the checks of others, too, or where none
 * of those was found, such as content the rules alone.
 *
 * @param answers  the best, then the next ones
 * @param complete whether the search came to its end
 * @param bound    no change that is not among the answers moves fewer points than this
 */
public record Changes(List<ChangeAnswer> answers, boolean complete, long bound) {
    public Changes {
        answers = List.copyOf(answers);
    }

    /** The best. */
    public Optional<ChangeAnswer> best() {
        return answers.stream().findFirst();
    }

    /** Whether nothing moves less than the best; if there is none, whether there can be none. */
    public boolean proven() {
        return complete || best().filter(answer -> answer.moved() <= bound).isPresent();
    }

    /** How sure that is, as a sentence. */
    public String proof() {
        if (answers.isEmpty()) {
            return complete ? "Nothing that can be taken out, put in or changed makes it legal."
                    : "No change was found; none under " + bound + " points can do.";
        }
        return proven() ? "Proven: nothing moves less."
                : "The best that was found; nothing under " + bound + " points can do.";
    }
}
