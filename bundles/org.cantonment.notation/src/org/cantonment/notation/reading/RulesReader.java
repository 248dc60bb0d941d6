package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Act;
import org.cantonment.domain.rules.Change;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.Expectation;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Formation;
import org.cantonment.domain.rules.Item;
import org.cantonment.domain.rules.Kind;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.Limit;
import org.cantonment.domain.rules.RuleExample;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Side;
import org.cantonment.domain.rules.Support;
import org.cantonment.domain.rules.Unit;
import org.cantonment.domain.rules.Withdrawal;
import org.cantonment.model.book.Line;
import org.cantonment.model.ruleset.Billet;
import org.cantonment.model.ruleset.Gives;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.form.LinePlaces;
import org.eclipse.emf.ecore.EObject;

/** Reads a rule set: its cards here, their lines with {@link FactReader}. */
public final class RulesReader {

    private final org.cantonment.model.ruleset.RuleSet book;
    private final Reading reading;
    private final Phrases phrases;
    private final FactReader facts;
    private final List<Side> sides = new ArrayList<>();
    private final List<Kind> kinds = new ArrayList<>();
    private final List<Era> eras = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();
    private final List<Formation> formations = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Likeness> likenesses = new ArrayList<>();
    private final List<Change> changes = new ArrayList<>();
    private final List<Withdrawal> withdrawals = new ArrayList<>();
    private final List<RuleExample> examples = new ArrayList<>();

    private RulesReader(org.cantonment.model.ruleset.RuleSet book, Reading reading) {
        this.book = book;
        this.reading = reading;
        this.phrases = Phrases.of(reading, book, null, null);
        this.facts = new FactReader(reading, phrases);
    }

    /**
     * @param book    a rule set as written
     * @param reading takes its places and problems
     * @return what it means
     */
    public static RuleSet read(org.cantonment.model.ruleset.RuleSet book, Reading reading) {
        return new RulesReader(book, reading).read();
    }

    private RuleSet read() {
        reading.at(reading.bookId(), book);
        if (Circles.leadsBack(book, each -> each.getBases())) {
            reading.problem(book, RulesetPackage.Literals.RULE_SET__BASES, Severity.BREACH, Codes.CIRCLE,
                    "This rule set lies over itself.");
        }
        int index = 0;
        for (Line card : book.getLines()) {
            index++;
            card(card, reading.bookId().line(index));
        }
        List<Id> over = Reading.refs(book.getBases()).stream().filter(id -> !id.equals(reading.bookId())).toList();
        return new RuleSet(reading.bookId(), Reading.label(book), over, phrases.when(book.getWhen()), sides, kinds,
                eras, items, units, formations, supports, limits, likenesses, changes, withdrawals, examples,
                notes());
    }

    private List<String> notes() {
        List<String> all = new ArrayList<>(Reading.notes(book.getNotes()));
        all.addAll(Reading.notes(book.getLines()));
        return all;
    }

    private void card(Line card, Id unnamed) {
        if (card instanceof org.cantonment.model.ruleset.Unit unit) {
            Id id = reading.id(unit);
            units.add(new Unit(id, Reading.label(unit), lines(unit, id), Reading.notes(unit.getLines())));
        } else if (card instanceof org.cantonment.model.ruleset.Formation formation) {
            formation(formation);
        } else if (card instanceof org.cantonment.model.ruleset.Support support) {
            support(support);
        } else if (card instanceof org.cantonment.model.ruleset.Limit limit) {
            Id id = reading.id(limit);
            limits.add(new Limit(id, Reading.label(limit), Words.of(Severity.class, limit.getSeverity()), lines(limit, id),
                    Reading.notes(limit.getLines())));
        } else if (card instanceof org.cantonment.model.ruleset.Likeness likeness) {
            Id id = reading.id(likeness);
            likenesses.add(new Likeness(id, Reading.label(likeness), lines(likeness, id),
                    Reading.notes(likeness.getLines())));
        } else if (card instanceof org.cantonment.model.ruleset.Change change) {
            change(change, unnamed);
        } else if (card instanceof org.cantonment.model.ruleset.Withdrawal withdrawal) {
            reading.at(unnamed, withdrawal);
            Words.of(Act.class, withdrawal.getAct()).ifPresent(act -> withdrawals.add(new Withdrawal(unnamed, act,
                    Reading.refs(withdrawal.getTargets()), phrases.when(withdrawal.getWhen()),
                    Reading.notes(withdrawal.getLines()))));
            lines(withdrawal, unnamed);
        } else if (card instanceof org.cantonment.model.ruleset.Example example) {
            example(example);
        } else {
            world(card, unnamed);
        }
    }

    private void world(Line card, Id unnamed) {
        if (card instanceof org.cantonment.model.ruleset.Side side) {
            sides.add(new Side(reading.id(side), Reading.label(side), Reading.notes(side.getLines())));
        } else if (card instanceof org.cantonment.model.ruleset.Kind kind) {
            boolean circle = Circles.leadsBack(kind, each -> one(each.getKind()));
            if (circle) {
                reading.problem(kind, RulesetPackage.Literals.KIND__KIND, Severity.BREACH, Codes.CIRCLE,
                        "The kind " + kind.getName() + " lies in itself.");
            }
            kinds.add(new Kind(reading.id(kind), Reading.label(kind),
                    circle ? Optional.empty() : Reading.ref(kind.getKind()), Reading.notes(kind.getLines())));
        } else if (card instanceof org.cantonment.model.ruleset.Era era) {
            boolean circle = Circles.leadsBack(era, each -> one(each.getPrevious()));
            if (circle) {
                reading.problem(era, RulesetPackage.Literals.ERA__PREVIOUS, Severity.BREACH, Codes.CIRCLE,
                        "The era " + era.getName() + " follows itself.");
            }
            eras.add(new Era(reading.id(era), Reading.label(era),
                    circle ? Optional.empty() : Reading.ref(era.getPrevious()), Reading.notes(era.getLines())));
        } else if (card instanceof org.cantonment.model.ruleset.Item item) {
            items.add(new Item(reading.id(item), Reading.label(item), Reading.notes(item.getLines())));
        }
        lines(card, unnamed);
    }

    private static <T extends EObject> List<T> one(T value) {
        return value == null ? List.of() : List.of(value);
    }

    private void formation(org.cantonment.model.ruleset.Formation formation) {
        Id id = reading.id(formation);
        if (Circles.leadsBack(formation, RulesReader::inside)) {
            reading.problem(formation, null, Severity.BREACH, Codes.CIRCLE, "The formation " + formation.getName()
                    + " contains itself: one of its billets takes a formation that leads back to it.");
        }
        formations.add(new Formation(id, Reading.label(formation), lines(formation, id),
                Reading.notes(formation.getLines())));
    }

    /** The formations that may stand in a formation. */
    private static List<org.cantonment.model.ruleset.Formation> inside(org.cantonment.model.ruleset.Formation outer) {
        List<org.cantonment.model.ruleset.Formation> found = new ArrayList<>();
        for (Line line : outer.getLines()) {
            if (line instanceof Billet billet) {
                billet.getPlaces().forEach(places -> places.getOf().forEach(of -> {
                    if (of instanceof org.cantonment.model.ruleset.Formation formation) {
                        found.add(formation);
                    }
                }));
            }
        }
        return found;
    }

    private void support(org.cantonment.model.ruleset.Support support) {
        Id id = reading.id(support);
        int per = reading.atLeastOne(support, RulesetPackage.Literals.SUPPORT__PER_COUNT, support.getPerCount());
        Support read = new Support(id, Reading.label(support), facts.places(support.getPlaces()), per,
                Reading.refs(support.getPer()), phrases.when(support.getWhen()), lines(support, id),
                Reading.notes(support.getLines()));
        if (!read.places().isEmpty()) {
            supports.add(read);
        }
    }

    private void change(org.cantonment.model.ruleset.Change change, Id unnamed) {
        reading.at(unnamed, change);
        List<Fact> lines = lines(change, unnamed);
        Reading.ref(change.getTarget()).ifPresent(target -> Words.of(Direction.class, change.getDirection())
                .ifPresent(direction -> changes.add(new Change(unnamed, direction, target,
                        phrases.when(change.getWhen()), lines, Reading.notes(change.getLines())))));
    }

    private void example(org.cantonment.model.ruleset.Example example) {
        Id id = reading.id(example);
        List<Expectation> gives = new ArrayList<>();
        List<Line> force = new ArrayList<>();
        int line = 0;
        for (Line each : example.getLines()) {
            line++;
            if (each instanceof Gives give) {
                gives.add(new Expectation(reading.at(id.line(line), give), give.isNothing(),
                        Words.of(Severity.class, give.getSeverity()), Reading.ref(give.getRule()), Reading.ref(give.getAt())));
            } else if (LinePlaces.allows(example, each)) {
                force.add(each);
            } else {
                reading.misplaced(each, "an example");
            }
        }
        examples.add(new RuleExample(id, Reading.label(example),
                phrases.positive(example, RulesetPackage.Literals.EXAMPLE__ROUND, example.getRound()),
                Reading.ref(example.getEra()), Reading.optional(example.getPoints()),
                new BodyReader(reading, id.child("list")).read(force), gives, Reading.notes(example.getLines())));
    }

    /** The facts under a card; a line that means nothing there is a finding. */
    private List<Fact> lines(Line card, Id id) {
        List<Fact> all = new ArrayList<>(card.getLines().size());
        int number = 0;
        for (Line line : card.getLines()) {
            number++;
            if (LinePlaces.allows(card, line)) {
                facts.read(line, reading.at(id.line(number), line)).ifPresent(all::add);
                line.getLines().forEach(inner -> reading.misplaced(inner, "that line"));
            } else {
                reading.misplaced(line, LinePlaces.headingOf(card));
            }
        }
        return all;
    }
}
