package org.cantonment.desk.judging;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.PointsLimit;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.notation.form.Codes;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** Makes the case of each list out of a meanings: what the list says itself, and what its round supplies. */
public final class Cases {
    private final Meanings meanings;
    private final Rulings rulings;
    private final Map<List<Id>, List<RuleSet>> closures = new HashMap<>();

    Cases(Meanings meanings, Rulings rulings) {
        this.meanings = meanings;
        this.rulings = rulings;
    }

    /** Cases for one question, beside whatever the desk judges: nothing is shared with it, so any thread may ask. */
    public static Cases of(Meanings meanings) {
        return new Cases(meanings, new Rulings());
    }

    /** The case of a list as it is written. */
    public ListCase of(ForceList list) {
        return new OneCase(list).make();
    }

    /** The case of a list as if it were written for an era, at the same time otherwise. */
    public ListCase in(ForceList list, Id era) {
        return of(new ForceList(list.id(), list.player(), list.round(), list.rules(), Optional.of(era), list.points(),
                list.body(), list.contingents(), list.borrowed(), list.brought(), list.notes()));
    }

    /** The rules that a list is under, lower ones first. */
    public List<RuleSet> booksOf(ForceList list) {
        return closure(new OneCase(list).rules());
    }

    /** Books as they stand at a time. */
    public Ruling ruling(List<RuleSet> books, Occasion occasion) {
        return rulings.of(books, occasion);
    }

    /** The eras of the rules that a list is under, in the order in which they are written. */
    public List<Id> erasOf(ForceList list) {
        return booksOf(list).stream().flatMap(book -> book.eras().stream()).map(Era::id).distinct()
                .toList();
    }

    /** The rulings of a book with all below it: one in each of its eras, or one without if it has none. */
    List<Ruling> rulingsOf(RuleSet book) {
        List<RuleSet> books = closure(List.of(book.id()));
        List<Id> eras = books.stream().flatMap(b -> b.eras().stream()).map(Era::id).distinct().toList();
        if (eras.isEmpty()) {
            return List.of(rulings.of(books, Occasion.UNKNOWN));
        }
        return eras.stream().map(era -> rulings.of(books, Occasion.in(era))).toList();
    }

    private List<RuleSet> closure(List<Id> books) {
        return closures.computeIfAbsent(books, meanings::closure);
    }

    private final class OneCase {
        private final ForceList list;
        private final Optional<Campaign> campaign;
        private final Optional<Round> round;
        private final List<Finding> unclear = new ArrayList<>();

        OneCase(ForceList list) {
            this.list = list;
            this.campaign = list.player().flatMap(meanings::campaignOf);
            this.round = campaign.flatMap(c -> list.round().isEmpty() ? Optional.empty()
                    : c.rounds().stream().filter(r -> r.number() == list.round().getAsInt()).findFirst());
        }

        ListCase make() {
            if (campaign.isPresent() && list.round().isPresent() && round.isEmpty()) {
                unclear("There is no round " + list.round().getAsInt() + " in " + campaign.get().title()
                        + ", so era and limit are not known.");
            }
            List<RuleSet> books = closure(rules());
            if (books.isEmpty()) {
                unclear("Nobody says which rules this list is under: write 'under' and the rule set in its first line"
                        + ", or 'plays' in the campaign.");
                return new ListCase(list, campaign.map(Campaign::id), Occasion.UNKNOWN, Optional.empty(),
                        Situation.BARE, unclear);
            }
            Occasion occasion = occasion(books);
            Ruling ruling = rulings.of(books, occasion);
            return new ListCase(list, campaign.map(Campaign::id), occasion, Optional.of(ruling),
                    situation(occasion), unclear);
        }

        private List<Id> rules() {
            return list.rules().isEmpty() ? campaign.map(Campaign::plays).orElse(List.of()) : list.rules();
        }

        private Occasion occasion(List<RuleSet> books) {
            Optional<LocalDate> day = round.flatMap(Round::play).map(play -> play.from());
            return new Occasion(era(books), list.round(), OptionalInt.empty(), day);
        }

        private Optional<Id> era(List<RuleSet> books) {
            if (list.era().isPresent()) {
                return list.era();
            }
            List<Id> open = round.map(Round::eras).orElse(List.of());
            if (open.isEmpty()) {
                open = books.stream().flatMap(b -> b.eras().stream()).map(Era::id).distinct().toList();
            }
            if (open.size() > 1) {
                unclear("Its era may be " + open.stream().map(Id::name).collect(Collectors.joining(" or "))
                        + ": write 'in' and the era in its first line. Until then nothing is judged by era.");
            }
            return open.size() == 1 ? Optional.of(open.get(0)) : Optional.empty();
        }

        private Situation situation(Occasion occasion) {
            Optional<Player> player = list.player().flatMap(id -> campaign.flatMap(c ->
                    c.players().stream().filter(p -> p.id().equals(id)).findFirst()));
            Optional<PointsLimit> limit = round.flatMap(r -> Limits.of(r, list.player()));
            OptionalInt points = list.points().isPresent() ? list.points()
                    : limit.map(l -> OptionalInt.of(l.points())).orElse(OptionalInt.empty());
            Optional<Id> pointsRule = list.points().isPresent() ? Optional.of(list.id()) : limit.map(PointsLimit::id);
            List<ForceList> earlier = earlier();
            return new Situation(points, points.isPresent() ? pointsRule : Optional.empty(), list.player(),
                    player.flatMap(Player::side),
                    earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.get(earlier.size() - 1)),
                    Used.in(earlier), campaign.map(Campaign::excuses).orElse(List.of()), contingents(occasion),
                    CancelToken.NEVER, meanings.atHand(list), meanings.kin());
        }

        private List<ForceList> earlier() {
            if (list.player().isEmpty() || list.round().isEmpty()) {
                return List.of();
            }
            int now = list.round().getAsInt();
            return meanings.listsOf(list.player().get()).stream()
                    .filter(other -> other.round().isPresent() && other.round().getAsInt() < now).toList();
        }

        private Map<Id, Ruling> contingents(Occasion occasion) {
            Map<Id, Ruling> all = new HashMap<>();
            for (Contingent contingent : list.contingents()) {
                List<RuleSet> books = closure(contingent.rules());
                if (!books.isEmpty()) {
                    all.put(contingent.id(), rulings.of(books, occasion));
                }
            }
            return all;
        }

        private void unclear(String message) {
            unclear.add(Finding.of(Codes.CONTEXT, Severity.CAUTION, list.id(), message));
        }
    }
}
