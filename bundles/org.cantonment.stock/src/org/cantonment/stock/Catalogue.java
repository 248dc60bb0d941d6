package org.cantonment.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.range.Bits;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.Change;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Item;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Option;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Swap;
import org.cantonment.domain.rules.Unit;

/** What ranges and rule sets know of the things on a shelf. Families that lie in each other in a circle are one family. */
public final class Catalogue {

    private final Map<Id, Titled> things = new HashMap<>();
    private final Map<Id, Set<Id>> members = new HashMap<>();
    private final Map<Id, Set<List<Id>>> unitNeeds = new HashMap<>();

    private Catalogue() {
    }

    /** Everything that these books name. Where two books use one id, the first is meant. */
    public static Catalogue of(Collection<Range> ranges, Collection<RuleSet> books) {
        Catalogue catalogue = new Catalogue();
        for (Range range : ranges) {
            catalogue.name(range.families());
            catalogue.name(range.pieces());
            catalogue.name(range.parts());
            catalogue.name(range.extras());
            catalogue.name(range.bits());
            catalogue.name(range.boxes());
        }
        catalogue.gatherMembers();
        for (RuleSet book : books) {
            catalogue.name(book.items());
            for (Unit unit : book.units()) {
                catalogue.things.putIfAbsent(unit.id(), unit);
                catalogue.gatherNeeds(unit.id(), unit.facts());
            }
        }
        for (RuleSet book : books) {
            for (Change change : book.changes()) {
                if (catalogue.unitNeeds.containsKey(change.target())) {
                    catalogue.gatherNeeds(change.target(), change.facts());
                }
            }
        }
        return catalogue;
    }

    private void name(Collection<? extends Titled> all) {
        all.forEach(thing -> things.putIfAbsent(thing.id(), thing));
    }

    private void gatherMembers() {
        for (Titled thing : things.values()) {
            if (thing instanceof Family) {
                members.computeIfAbsent(thing.id(), id -> new TreeSet<>());
            }
        }
        for (Titled thing : things.values()) {
            if (thing instanceof Piece piece) {
                Set<Id> seen = new HashSet<>();
                for (Optional<Id> at = piece.family(); at.isPresent() && seen.add(at.get()); at = parent(at.get())) {
                    members.computeIfAbsent(at.get(), id -> new TreeSet<>()).add(piece.id());
                }
            }
        }
        members.replaceAll((family, types) -> Collections.unmodifiableSet(new LinkedHashSet<>(types)));
    }

    private Optional<Id> parent(Id family) {
        return things.get(family) instanceof Family known ? known.parent() : Optional.empty();
    }

    private void gatherNeeds(Id unit, List<Fact> facts) {
        Set<List<Id>> needs = unitNeeds.computeIfAbsent(unit, id -> new LinkedHashSet<>());
        for (Fact fact : facts) {
            if (fact instanceof Needs line) {
                add(needs, line.needs());
            } else if (fact instanceof Strength line) {
                add(needs, line.needs());
            } else if (fact instanceof Option option) {
                add(needs, option.adds());
                add(needs, option.swaps().stream().map(Swap::in).toList());
            }
        }
    }

    private static void add(Set<List<Id>> needs, List<Need> more) {
        more.forEach(need -> needs.add(need.anyOf()));
    }

    /** Whether the books name it at all. */
    public boolean knows(Id id) {
        return things.containsKey(id);
    }

    /** Whether it is bits, which stand nowhere by themselves. */
    public boolean isBits(Id id) {
        return things.get(id) instanceof Bits;
    }

    /** Whether it is an item of a rule set, which no shelf holds. */
    public boolean isItem(Id id) {
        return things.get(id) instanceof Item;
    }

    /** Whether it is a piece type. */
    public boolean isPiece(Id id) {
        return things.get(id) instanceof Piece;
    }

    /** Whether it is a unit of a rule set. */
    public boolean isUnit(Id id) {
        return unitNeeds.containsKey(id);
    }

    /** The part of this id. */
    public Optional<Part> part(Id id) {
        return things.get(id) instanceof Part part ? Optional.of(part) : Optional.empty();
    }

    /** The box of this id. */
    public Optional<Box> box(Id id) {
        return things.get(id) instanceof Box box ? Optional.of(box) : Optional.empty();
    }

    /** What people call it; its name if the books do not know it. */
    public String title(Id id) {
        Titled thing = things.get(id);
        return thing == null ? id.name() : thing.title();
    }

    /** The piece types that a name means: those of a family and of the families in it, else the thing alone. */
    public Set<Id> meant(Id id) {
        Set<Id> family = members.get(id);
        return family == null ? Set.of(id) : family;
    }

    /** The piece types that any of these names mean, in the order of their ids. */
    public Set<Id> meant(Collection<Id> names) {
        if (names.size() == 1) {
            return meant(names.iterator().next());
        }
        Set<Id> all = new TreeSet<>();
        names.forEach(name -> all.addAll(meant(name)));
        return all;
    }

    /** The own family of a piece type; empty for anything else. */
    public Optional<Id> family(Id type) {
        return things.get(type) instanceof Piece piece ? piece.family() : Optional.empty();
    }

    /** The piece types that a unit needs in any era, at any strength and with any option. */
    public Set<Id> models(Id unit) {
        List<Id> named = new ArrayList<>();
        unitNeeds.getOrDefault(unit, Set.of()).forEach(named::addAll);
        Set<Id> models = new TreeSet<>(meant(named));
        models.removeIf(this::isItem);
        return models;
    }
}
