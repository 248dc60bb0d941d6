package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InEras;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.When;
import org.cantonment.domain.rules.Availability;
import org.cantonment.domain.rules.Successor;
import org.cantonment.rules.view.Permission;

/** Whether something may be taken at this time, and if not, in words why. */
final class Permissions {

    private final Occasion occasion;
    private final EraTree eras;
    private final Withdrawals withdrawals;
    private final BookOrder order;
    private final Names names;
    private final TimeWords times;

    Permissions(Occasion occasion, EraTree eras, Withdrawals withdrawals, BookOrder order, Names names) {
        this.occasion = occasion;
        this.eras = eras;
        this.withdrawals = withdrawals;
        this.order = order;
        this.names = names;
        this.times = new TimeWords(names);
    }

    Permission of(Card card) {
        Optional<Withdrawals.Spoken> forbid = withdrawals.forbid(card.id());
        if (forbid.isPresent()) {
            Withdrawals.Spoken spoken = forbid.get();
            String until = times.of(spoken.withdrawal().when());
            return new Permission(false, "unit.forbidden",
                    "forbidden by " + order.title(spoken.book()) + (until.isEmpty() ? "" : ' ' + until),
                    Optional.of(spoken.withdrawal().id()), Optional.empty());
        }
        if (withdrawals.allows(card.id())) {
            return Permission.GRANTED;
        }
        Optional<Said<Successor>> ended = card.holding(Successor.class).stream()
                .filter(said -> !said.fact().when().always()).findFirst();
        if (ended.isPresent()) {
            Successor line = ended.get().fact();
            return refuse("era.no-longer", "no longer " + now(), line.id(), Optional.of(line.unit()));
        }
        return byLines(card);
    }

    /** A support or the like holds while its own time does. */
    Permission of(Id id, Validity when) {
        if (when.covers(occasion, eras) || occasion.era().isEmpty() && onEras(when)) {
            return Permission.GRANTED;
        }
        return refused(List.of(new Availability(id, when)), Optional.empty());
    }

    private Permission byLines(Card card) {
        List<Said<Availability>> all = new ArrayList<>(card.holding(Availability.class));
        all.addAll(card.others(Availability.class));
        int top = all.stream().mapToInt(Said::book).max().orElse(-1);
        List<Availability> lines = new ArrayList<>();
        for (Said<Availability> said : all) {
            if (said.book() == top) {
                lines.add(said.fact());
                if (said.fact().when().covers(occasion, eras)
                        || occasion.era().isEmpty() && onEras(said.fact().when())) {
                    return Permission.GRANTED;
                }
            }
        }
        if (lines.isEmpty()) {
            return Permission.GRANTED;
        }
        Optional<Id> successor = card.holding(Successor.class).stream().map(said -> said.fact().unit()).findFirst();
        return refused(lines, successor);
    }

    private static boolean onEras(Validity when) {
        for (When condition : when.conditions()) {
            boolean reach = condition instanceof Reach span && (span.from().filter(OfEra.class::isInstance).isPresent()
                    || span.to().filter(OfEra.class::isInstance).isPresent());
            if (reach || condition instanceof InEras) {
                return true;
            }
        }
        return false;
    }

    private Permission refused(List<Availability> lines, Optional<Id> successor) {
        String code = "unit.not-now";
        for (Availability line : lines) {
            for (When condition : line.when().conditions()) {
                code = weightier(code, codeOf(condition));
            }
        }
        StringBuilder words = new StringBuilder();
        for (Availability line : lines) {
            words.append(words.length() == 0 ? "" : " or ").append(times.of(line.when()));
        }
        String lead = switch (code) {
            case "era.not-yet" -> "not yet " + now() + "; available ";
            case "era.no-longer" -> "no longer " + now() + "; available ";
            case "era.only-in" -> "not " + now() + "; available only ";
            default -> "not at this time; available only ";
        };
        return refuse(code, lead + words, lines.get(0).id(), successor);
    }

    private String codeOf(When condition) {
        if (condition.covers(occasion, eras)) {
            return "unit.not-now";
        }
        if (condition instanceof InEras) {
            return "era.only-in";
        }
        if (condition instanceof Reach reach && occasion.era().isPresent()) {
            if (reach.to().isPresent() && reach.to().get() instanceof OfEra last
                    && eras.follows(occasion.era().get(), last.era())) {
                return "era.no-longer";
            }
            if (reach.from().isPresent() && reach.from().get() instanceof OfEra) {
                return "era.not-yet";
            }
            if (reach.to().isPresent() && reach.to().get() instanceof OfEra) {
                return "era.only-in";
            }
        }
        return "unit.not-now";
    }

    private static String weightier(String code, String other) {
        List<String> weights = List.of("unit.not-now", "era.only-in", "era.no-longer", "era.not-yet");
        return weights.indexOf(other) > weights.indexOf(code) ? other : code;
    }

    private Permission refuse(String code, String reason, Id rule, Optional<Id> successor) {
        String whole = successor.map(unit -> reason + "; its place is taken by " + names.title(unit)).orElse(reason);
        return new Permission(false, code, whole, Optional.of(rule), successor);
    }

    private String now() {
        return occasion.era().map(era -> "in " + names.title(era)).orElse("at this time");
    }
}
