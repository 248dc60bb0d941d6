package org.cantonment.rules.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;

/**
 * A rule set with its layers as it stands at one time. Immutable; made by
 * {@link org.cantonment.rules.compile.RulingCompiler}.
 */
public final class Ruling {

    private final Occasion occasion;
    private final EraOrder eras;
    private final Map<Id, Choice> choicesById;
    private final List<Choice> choices;
    private final List<SupportView> supports;
    private final List<LimitView> limits;
    private final Map<Id, String> titles;
    private final List<Finding> findings;
    private final boolean formations;
    private final List<Integer> surcharged;

    /** All that was looked up; the choices stand in the order of their numbers. */
    public Ruling(Occasion occasion, EraOrder eras, List<Choice> choices, Map<Id, Choice> choicesById,
            List<SupportView> supports, List<LimitView> limits, Map<Id, String> titles, List<Finding> findings,
            List<Integer> surcharged) {
        this.occasion = occasion;
        this.eras = eras;
        this.choices = List.copyOf(choices);
        this.choicesById = Map.copyOf(choicesById);
        this.supports = List.copyOf(supports);
        this.limits = List.copyOf(limits);
        this.titles = Map.copyOf(titles);
        this.findings = List.copyOf(findings);
        this.surcharged = List.copyOf(surcharged);
        this.formations = choices.stream().anyMatch(FormationView.class::isInstance);
    }

    /** The time it is made for. */
    public Occasion occasion() {
        return occasion;
    }

    /** Which era comes after which. */
    public EraOrder eras() {
        return eras;
    }

    /** The unit or formation of this id, or null if these books know none. */
    public Choice choice(Id id) {
        return choicesById.get(id);
    }

    /** All units and formations, also those that may not be taken now, by number. */
    public List<Choice> choices() {
        return choices;
    }

    /** All units, by number. */
    public List<UnitView> units() {
        List<UnitView> units = new ArrayList<>();
        for (Choice choice : choices) {
            if (choice instanceof UnitView unit) {
                units.add(unit);
            }
        }
        return units;
    }

    /** The choices that cost more or less for what else is in the list, each after those whose points it asks for. */
    public List<Integer> surcharged() {
        return surcharged;
    }

    /** Whether the books know any formation. */
    public boolean hasFormations() {
        return formations;
    }

    /** All supports, by number. */
    public List<SupportView> supports() {
        return supports;
    }

    /** All limits that hold at this time. */
    public List<LimitView> limits() {
        return limits;
    }

    /** What people call anything these books name; the bare name for what they do not. */
    public String title(Id id) {
        String title = titles.get(id);
        return title == null ? id.name() : title;
    }

    /** What is wrong in the books themselves at this time: layers that collide, lines said twice. */
    public List<Finding> findings() {
        return findings;
    }
}
