package org.cantonment.stock.likeness;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.cantonment.stock.Catalogue;

/** Reads cards of likeness for one time. */
final class AllowanceMaker {

    private final Catalogue catalogue;
    private final Terms terms;
    private final List<StandInLine> lines = new ArrayList<>();
    private final List<Conversion> conversions = new ArrayList<>();
    private Optional<Level> level = Optional.empty();
    private boolean oneTable;

    AllowanceMaker(Catalogue catalogue, Terms terms) {
        this.catalogue = catalogue;
        this.terms = terms;
    }

    Allowance make(Collection<Likeness> cards, Optional<Round> round) {
        Optional<Level> said = round.flatMap(Round::likeness);
        boolean named = said.isEmpty() || said.get() == Level.STAND_IN;
        for (Likeness card : cards) {
            card.facts().forEach(fact -> take(fact, named));
        }
        Optional<Level> ofCards = level;
        level = Optional.empty();
        round.ifPresent(one -> one.likenessFacts().forEach(fact -> take(fact, true)));
        Level general = said.or(() -> level).or(() -> ofCards).orElse(Level.EXACT);
        Level ceiling = terms.ceiling().orElse(Level.STAND_IN);
        boolean below = ceiling != Level.STAND_IN;
        return new Allowance(general.compareTo(ceiling) < 0 ? general : ceiling, below ? List.of() : lines,
                below ? List.of() : conversions, oneTable);
    }

    private void take(Fact fact, boolean named) {
        if (fact instanceof Allows allows && holds(allows.when())) {
            level = Optional.of(level.filter(other -> other.compareTo(allows.level()) < 0).orElse(allows.level()));
        } else if (fact instanceof OneTable one && holds(one.when())) {
            oneTable = true;
        } else if (named && fact instanceof Stands stands && holds(stands.when()) && (terms.leave() || !stands.leave())) {
            lines.add(line(stands));
        } else if (named && fact instanceof Turns turns && holds(turns.when())) {
            conversion(turns).ifPresent(conversions::add);
        }
    }

    private boolean holds(Validity when) {
        return when.covers(terms.occasion(), terms.eras());
    }

    private StandInLine line(Stands stands) {
        return new StandInLine(new StandIn(stands.id(), stands.percent(), stands.leave()), types(stands.what()),
                units(stands.what()), types(stands.standFor()), units(stands.standFor()));
    }

    private Set<Id> types(List<Id> names) {
        Set<Id> types = new TreeSet<>();
        names.stream().filter(name -> !catalogue.isUnit(name)).forEach(name -> types.addAll(catalogue.meant(name)));
        return types;
    }

    private Map<Id, Set<Id>> units(List<Id> names) {
        Map<Id, Set<Id>> units = new TreeMap<>();
        names.stream().filter(catalogue::isUnit).forEach(name -> units.put(name, catalogue.models(name)));
        return units;
    }

    /** A conversion that takes nothing, or what nobody can count, is none. */
    private static Optional<Conversion> conversion(Turns turns) {
        Map<Id, Integer> from = new TreeMap<>();
        for (Content content : turns.from()) {
            if (content.certainty() == Certainty.UNKNOWN || content.count() < 1) {
                return Optional.empty();
            }
            from.merge(content.what(), content.count(), Integer::sum);
        }
        if (from.isEmpty() || turns.to().count() < 1 || from.containsKey(turns.to().what())) {
            return Optional.empty();
        }
        return Optional.of(new Conversion(turns.id(), from, turns.to().what(), turns.to().count(), turns.times()));
    }
}
