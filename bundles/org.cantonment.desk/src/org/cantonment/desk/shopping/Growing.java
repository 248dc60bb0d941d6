package org.cantonment.desk.shopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.desk.judging.ListCase;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.PlayDates;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.rules.Judge;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.joda.money.Money;

/** Asks what to buy before which round. For one question. */
public final class Growing {
    /**
     * What is asked beside the player.
     *
     * @param rounds  rounds and spans of rounds; empty for all that are still to come
     * @param budgets amounts as typed, one for each round or one for all; empty for what the books say
     * @param saved   whether what is left of the amounts typed may be spent later
     * @param compose whether lists are composed even where they are written
     * @param least   what a composed list uses of its limit at the least, in percent
     * @param bench   what can be built before each round, as typed; empty for what the player wishes
     */
    public record Terms(List<String> rounds, List<String> budgets, boolean saved, boolean compose, int least,
            Optional<String> bench) {
        /** A list of less than half its limit is no army. */
        public static final int HALF = 50;

        /** @throws IllegalArgumentException if the percentage is none */
        public Terms {
            if (least < 0 || least > HUNDRED) {
                throw new IllegalArgumentException(least + " percent");
            }
            rounds = List.copyOf(rounds);
            budgets = List.copyOf(budgets);
        }
    }

    private static final int HUNDRED = 100;

    private final Meanings meanings;
    private final Player player;
    private final String title;
    private final Shops shops;
    private final Aims aims;
    private final CancelToken cancel;
    private final Progress progress;

    private Growing(Meanings meanings, Player player, Shops shops, CancelToken cancel, Progress progress) {
        this.meanings = meanings;
        this.player = player;
        this.title = ListTitle.player(player.id(), meanings);
        this.shops = shops;
        this.aims = new Aims(meanings, player, shops.market().catalogue());
        this.cancel = cancel;
        this.progress = progress;
    }

    /**
     * Asks.
     *
     * @throws Unclear if there are no such rounds, or a list is under no rules, or an amount makes no sense
     */
    public static GrowAnswer of(Meanings meanings, Player player, Terms terms, Shops shops, CancelToken cancel,
            Progress progress) throws Unclear {
        return new Growing(meanings, player, shops, cancel, progress).ask(terms);
    }

    private GrowAnswer ask(Terms terms) throws Unclear {
        List<Turn> turns = new ArrayList<>();
        for (Round round : rounds(terms.rounds())) {
            turns.add(turn(round, terms.compose()));
        }
        Wishes wishes = new Wishes(meanings.shelves().stream().filter(shelf -> shelf.owners().contains(player.id()))
                .flatMap(shelf -> shelf.wishes().stream()).toList());
        Purse purse = purse(terms, turns, wishes.all());
        Benches benches = new Benches(terms.bench().isEmpty() ? Optional.empty()
                : Optional.of(Benches.read(terms.bench().get())), wishes);
        List<Stage> stages = stages(turns, purse, benches);
        List<String> remarks = new ArrayList<>(wishes.remarks(turns));
        remarks.addAll(benches.remarks());
        GrowPlan plan = plan(turns, wishes, terms, stages, purse.saved());
        if (plan.growth().answer().plan().isEmpty() && wishes.likes() && turns.stream().anyMatch(turn -> turn.written().isEmpty())
                && !cancel.cancelled()) {
            GrowPlan plain = plan(turns, wishes.plain(), terms, stages, purse.saved());
            if (plain.growth().answer().plan().isPresent()) {
                plan = plain;
                remarks.add("With what is wished for there is no plan for this money"
                        + (stages.stream().anyMatch(stage -> stage.bench().isPresent()) ? " and this time at the bench" : "")
                        + "; so it is left aside.");
            }
        }
        remarks.addAll(plan.remarks());
        List<Aim> given = new ArrayList<>();
        for (Target target : plan.targets()) {
            if (target.choice().isEmpty()) {
                given.add(new Aim(target, Optional.ofNullable(plan.lists().get(target.id()))));
            }
        }
        remarks.addAll(aims.remarks());
        Shopper shopper = Shopper.of(meanings, player, shops, given, remarks.stream().distinct().toList());
        return new GrowAnswer(shopper, shops, steps(turns, stages, plan), purse.saved(), purse.why(), benches.words(),
                plan.growth(), cancel.cancelled());
    }

    private GrowPlan plan(List<Turn> turns, Wishes wishes, Terms terms, List<Stage> stages, boolean saved) throws Unclear {
        return new GrowPlanner(title, aims, shops, Shopper.shelf(meanings, player, shops), earlier(turns), cancel, progress)
                .plan(turns, wishes, terms.least(), stages, saved);
    }

    private List<Round> rounds(List<String> words) throws Unclear {
        List<Round> all = meanings.campaignOf(player.id()).map(Campaign::rounds).orElse(List.of()).stream()
                .sorted((a, b) -> Integer.compare(a.number(), b.number())).toList();
        List<Integer> wanted = new ArrayList<>();
        for (String word : words) {
            wanted.addAll(ListChoice.rounds(word).orElseThrow(() -> new Unclear("'" + word
                    + "' is no round; write it like 3, or 3-5.")));
        }
        for (int number : wanted) {
            if (all.stream().noneMatch(round -> round.number() == number)) {
                throw new Unclear("There is no round " + number + " in this campaign.");
            }
        }
        List<Round> some = all.stream().filter(round -> words.isEmpty() ? !over(round) : wanted.contains(round.number()))
                .toList();
        if (some.isEmpty()) {
            throw new Unclear(all.isEmpty() ? "The campaign has no rounds." : "No round is still to be played after "
                    + shops.day() + ": say with '--rounds' which are meant.");
        }
        return some;
    }

    private boolean over(Round round) {
        return round.play().map(PlayDates::to).filter(last -> last.isBefore(shops.day())).isPresent();
    }

    private Turn turn(Round round, boolean compose) throws Unclear {
        Optional<ForceList> written = compose ? Optional.empty() : ListChoice.ofRound(meanings, player, round.number());
        ForceList asked = written.orElseGet(() -> new ForceList(Id.of(player.id().name() + "-" + round.number()),
                Optional.of(player.id()), OptionalInt.of(round.number()), List.of(), Optional.empty(), OptionalInt.empty(),
                Body.EMPTY, List.of(), List.of(), List.of(), List.of()));
        ListCase about = aims.about(asked);
        if (about.ruling().isEmpty()) {
            throw new Unclear(about.unclear().get(about.unclear().size() - 1).message());
        }
        if (written.isEmpty() && about.situation().points().isEmpty()) {
            throw new Unclear(title + " has no list for round " + round.number()
                    + ", and the round has no limit of points by which one could be composed.");
        }
        return new Turn(round, written, about);
    }

    private Purse purse(Terms terms, List<Turn> turns, List<Wish> wishes) throws Unclear {
        if (terms.budgets().isEmpty()) {
            return Purse.written(turns.stream().map(Turn::round).toList(), wishes, shops.currency());
        }
        List<Money> amounts = new ArrayList<>();
        for (String amount : terms.budgets()) {
            amounts.add(Cash.read(amount, shops.currency()));
        }
        return Purse.asked(amounts, terms.saved(), turns.size());
    }

    /** What is bought before a round is ordered when the one before it is over. */
    private List<Stage> stages(List<Turn> turns, Purse purse, Benches benches) {
        List<Stage> stages = new ArrayList<>();
        Optional<LocalDate> ordered = Optional.of(shops.day());
        LocalDate free = shops.day();
        for (int stage = 0; stage < turns.size(); stage++) {
            Optional<PlayDates> play = turns.get(stage).round().play();
            stages.add(new Stage(ordered, play.map(PlayDates::from), purse.budgets().get(stage),
                    benches.before(turns.get(stage), free)));
            Optional<LocalDate> over = play.map(PlayDates::to);
            ordered = over.filter(day -> day.isAfter(shops.day())).or(() -> over.map(day -> shops.day()));
            free = ordered.orElse(free);
        }
        return stages;
    }

    private Earlier earlier(List<Turn> turns) {
        return new Earlier(meanings.listsOf(player.id()), turns);
    }

    private List<Step> steps(List<Turn> turns, List<Stage> stages, GrowPlan plan) {
        List<Step> steps = new ArrayList<>();
        Earlier earlier = earlier(turns);
        Map<Integer, ForceList> composed = new TreeMap<>();
        for (int stage = 0; stage < turns.size(); stage++) {
            int at = stage;
            Optional<ForceList> list = turns.get(stage).written().or(() -> plan.growth().answer().plan().flatMap(one ->
                    one.fielded().stream().filter(target -> target.stage() == at).findFirst())
                            .map(target -> plan.lists().get(target.id())));
            steps.add(step(turns.get(stage), stages.get(stage), list, earlier.of(stage, composed), plan.out().getOrDefault(stage, List.of())));
            if (turns.get(stage).written().isEmpty()) {
                list.ifPresent(one -> composed.put(at, one));
            }
        }
        return steps;
    }

    private Step step(Turn turn, Stage stage, Optional<ForceList> list, Situation situation, List<String> out) {
        Ruling ruling = turn.about().ruling().orElseThrow();
        boolean composed = turn.written().isEmpty();
        return new Step(turn.round().number(), turn.round().label(), situation.points(), composed, list,
                list.map(one -> ListWords.of(one, ruling)).orElse(""),
                composed ? list.map(one -> ListBook.of(one, player.id(), turn.round().number(), meanings)).orElse("") : "",
                list.map(one -> Judge.judge(ruling, one, situation)), stage.bench(), out);
    }
}
