package org.cantonment.domain.shelf;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.Titled;

/** What a player wishes from the plans. */
public record Wish(
        Id id, String label, List<WishFor> tastes, List<WishBudget> budgets, Optional<WishBench> bench, List<InRounds> rounds,
        OptionalInt sparesPercent, List<String> notes) implements Titled {

    public Wish {
        tastes = List.copyOf(tastes);
        budgets = List.copyOf(budgets);
        rounds = List.copyOf(rounds);
        notes = List.copyOf(notes);
    }

    /** Nothing is said of hours at the bench. */
    public Wish(Id id, String label, List<WishFor> tastes, List<WishBudget> budgets, List<InRounds> rounds,
            OptionalInt sparesPercent, List<String> notes) {
        this(id, label, tastes, budgets, Optional.empty(), rounds, sparesPercent, notes);
    }
}
