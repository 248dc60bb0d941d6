package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Made;
import org.cantonment.domain.shelf.MadeAct;
import org.cantonment.domain.shelf.Source;
import org.cantonment.domain.shelf.State;
import org.cantonment.domain.shelf.StateShare;
import org.cantonment.model.range.Box;
import org.cantonment.model.range.Part;
import org.cantonment.model.shelf.DateMark;
import org.cantonment.model.shelf.LooseMark;
import org.cantonment.model.shelf.Mark;
import org.cantonment.model.shelf.PaidMark;
import org.cantonment.model.shelf.PrintingMark;
import org.cantonment.model.shelf.ShelfPackage;
import org.cantonment.model.shelf.SourceMark;
import org.cantonment.model.shelf.StateMark;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.reading.Under.Taken;
import org.eclipse.emf.ecore.EObject;
import org.joda.money.Money;

/** Reads what is owned, line by line. */
final class HoldingReader {

    private final Reading reading;
    private final Phrases phrases;

    HoldingReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
    }

    /** What stands behind the thing that is held. */
    private final class Marks {
        private final List<StateShare> states = new ArrayList<>();
        private final Said<Fixing> fixing = new Said<>(reading);
        private final Said<Money> paid = new Said<>(reading);
        private final Said<LocalDate> on = new Said<>(reading);
        private final Said<Source> from = new Said<>(reading);
        private final Said<Id> printing = new Said<>(reading);
        private final Said<State> rest = new Said<>(reading);

        void take(Mark mark) {
            if (mark instanceof StateMark state) {
                Words.of(State.class, state.getState()).ifPresent(word -> state(state, word));
            } else if (mark instanceof LooseMark loose) {
                fixing.say(loose, BoxReader.fixing(false, loose.isGames(), loose.isBench()));
            } else if (mark instanceof PaidMark money) {
                paid.say(money, phrases.money(money.getMoney()));
            } else if (mark instanceof DateMark date) {
                on.say(date, phrases.date(date, ShelfPackage.Literals.DATE_MARK__DATE, date.getDate()));
            } else if (mark instanceof SourceMark source) {
                from.say(source, Sources.read(source, source.getText(), source.getSource()));
            } else if (mark instanceof PrintingMark of) {
                printing.say(of, Reading.ref(of.getPrinting()));
            }
        }

        /** A state without a number is that of all the rest, so there can be one such state only. */
        private void state(StateMark mark, State word) {
            if (mark.getCount() == null) {
                boolean first = rest.value().isEmpty();
                rest.say(mark, Optional.of(word));
                if (!first) {
                    return;
                }
            }
            states.add(new StateShare(Reading.optional(mark.getCount()), word));
        }
    }

    /** @return the holding; empty if its name means nothing */
    Optional<Holding> read(org.cantonment.model.shelf.Holding holding, Id id) {
        Marks marks = new Marks();
        holding.getMarks().forEach(marks::take);
        Certainty certainty = Words.of(Certainty.class, holding.getCertainty()).orElse(Certainty.KNOWN);
        int count = Reading.number(holding.getCount(), 1);
        if (certainty != Certainty.UNKNOWN || holding.getCount() != null) {
            shares(holding, count, marks.states);
        }
        List<Made> made = made(holding, id);
        return Reading.ref(holding.getWhat()).map(what -> new Holding(id, certainty, count, what, marks.states,
                marks.fixing.value(), marks.paid.value(), marks.on.value(), marks.from.value(), marks.printing.value(),
                made, Reading.notes(holding.getLines())));
    }

    private void shares(org.cantonment.model.shelf.Holding holding, int count, List<StateShare> states) {
        long stated = states.stream().map(StateShare::count).filter(OptionalInt::isPresent)
                .mapToLong(OptionalInt::getAsInt).sum();
        if (stated > count) {
            reading.problem(holding, ShelfPackage.Literals.HOLDING__MARKS, Severity.BREACH, Codes.SHARE,
                    "The states add up to " + stated + ", but there " + (count == 1 ? "is " : "are ") + count + ".");
        }
    }

    private List<Made> made(org.cantonment.model.shelf.Holding holding, Id id) {
        List<Made> made = new ArrayList<>();
        EObject what = holding.getWhat();
        boolean whole = Reading.ref(what).isPresent() && !(what instanceof Box) && !(what instanceof Part);
        String words = Reading.ref(what).map(of -> "'" + of.name() + "'").orElse("this");
        Under.each(reading, id, holding.getLines(), words, (line, at) -> {
            if (whole || !(line instanceof org.cantonment.model.shelf.Made act)) {
                return Taken.NO;
            }
            List<Held> things = Things.held(act.getThings());
            if (!things.isEmpty()) {
                Words.of(MadeAct.class, act.getAct()).ifPresent(word -> made.add(new Made(at, word, things)));
            }
            return Taken.ALONE;
        });
        return made;
    }
}
