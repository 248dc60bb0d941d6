package org.cantonment.desk.shopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.buying.growth.Brief;
import org.cantonment.buying.growth.Composer;
import org.cantonment.buying.growth.Composer.Composed;
import org.cantonment.buying.growth.Grower;
import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.growth.Guide;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
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
     * @param bench   how many parts can be built before each round; empty for no end
     */
    public record Terms(List<String> rounds, List<String> budgets, boolean saved, boolean compose, int least,
            OptionalInt bench) {
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

    private record Turn(Round round, Optional<ForceList> written, ListCase about) {
    }

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
        List<Wish> wishes = meanings.shelves().stream().filter(shelf -> shelf.owners().contains(player.id()))
                .flatMap(shelf -> shelf.wishes().stream()).toList();
        Purse purse = purse(terms, turns, wishes);
        List<Target> targets = new ArrayList<>();
        Map<Id, ForceList> lists = new LinkedHashMap<>();
        List<Integer> without = targets(turns, wishes, terms.least(), targets, lists);
        List<Aim> given = targets.stream().filter(target -> target.choice().isEmpty())
                .map(target -> new Aim(target, Optional.ofNullable(lists.get(target.id())))).toList();
        Shopper shopper = Shopper.of(meanings, player, shops, given, aims.remarks());
        if (!without.isEmpty()) {
            return new GrowAnswer(shopper, shops, steps(turns, Optional.empty(), lists), purse.saved(), purse.why(),
                    Optional.empty(), without.stream().map(stage -> step(turns.get(stage), Optional.empty(), Optional.empty()))
                            .toList(), cancel.cancelled());
        }
        Question question = new Question(shops.market(), shopper.shelf(), targets, stages(turns, purse, terms.bench()),
                purse.saved(), Map.of());
        Growth growth = Grower.grow(question, shops.currency(), cancel, progress);
        return new GrowAnswer(shopper, shops, steps(turns, growth.answer().plan(), lists), purse.saved(), purse.why(),
                Optional.of(growth), List.of(), cancel.cancelled());
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

    /** Written lists as they are; in between, runs of rounds that have none are composed together. */
    private List<Integer> targets(List<Turn> turns, List<Wish> wishes, int percent, List<Target> targets,
            Map<Id, ForceList> lists) throws Unclear {
        List<Integer> without = new ArrayList<>();
        List<Brief> run = new ArrayList<>();
        for (int stage = 0; stage < turns.size(); stage++) {
            Turn turn = turns.get(stage);
            if (turn.written().isPresent()) {
                compose(run, targets, lists, without);
                targets.add(aims.of(turn.written().get(), stage).target());
                lists.put(turn.written().get().id(), turn.written().get());
            } else {
                run.add(brief(turn, stage, stage == 0 ? Optional.empty() : turns.get(stage - 1).written(), percent, wishes));
            }
        }
        compose(run, targets, lists, without);
        return without;
    }

    private Brief brief(Turn turn, int stage, Optional<ForceList> before, int percent, List<Wish> wishes) {
        Situation situation = turn.about().situation().withCancel(cancel);
        int least = (int) (situation.points().orElseThrow() * (long) percent / HUNDRED);
        return new Brief(turn.about().list().id(), title + ", round " + turn.round().number(), stage,
                turn.about().ruling().orElseThrow(), before.map(situation::withBefore).orElse(situation),
                aims.allowance(turn.about().list(), turn.about().ruling().get()), least, wishes);
    }

    private void compose(List<Brief> run, List<Target> targets, Map<Id, ForceList> lists, List<Integer> without) {
        if (!run.isEmpty()) {
            Composed composed = Composer.compose(run, Guide.of(shops.market(), Shopper.shelf(meanings, player, shops)), cancel, progress);
            targets.addAll(composed.targets());
            lists.putAll(composed.lists());
            without.addAll(composed.without());
            run.clear();
        }
    }

    /** What is bought before a round is ordered when the one before it is over. */
    private List<Stage> stages(List<Turn> turns, Purse purse, OptionalInt bench) {
        List<Stage> stages = new ArrayList<>();
        Optional<LocalDate> ordered = Optional.of(shops.day());
        for (int stage = 0; stage < turns.size(); stage++) {
            Optional<PlayDates> play = turns.get(stage).round().play();
            Stage one = new Stage(ordered, play.map(PlayDates::from), purse.budgets().get(stage));
            stages.add(bench.isPresent() ? one.building(bench.getAsInt()) : one);
            Optional<LocalDate> over = play.map(PlayDates::to);
            ordered = over.filter(day -> day.isAfter(shops.day())).or(() -> over.map(day -> shops.day()));
        }
        return stages;
    }

    private List<Step> steps(List<Turn> turns, Optional<Plan> plan, Map<Id, ForceList> lists) {
        List<Step> steps = new ArrayList<>();
        Optional<ForceList> before = Optional.empty();
        for (int stage = 0; stage < turns.size(); stage++) {
            int at = stage;
            Optional<ForceList> list = turns.get(stage).written().or(() -> plan.flatMap(one -> one.fielded().stream()
                    .filter(target -> target.stage() == at).findFirst()).map(target -> lists.get(target.id())));
            steps.add(step(turns.get(stage), list, before));
            before = list;
        }
        return steps;
    }

    private Step step(Turn turn, Optional<ForceList> list, Optional<ForceList> before) {
        Situation situation = turn.about().situation();
        Situation then = turn.written().isPresent() ? situation : before.map(situation::withBefore).orElse(situation);
        return new Step(turn.round().number(), turn.round().label(), situation.points(), turn.written().isEmpty(), list,
                list.map(one -> ListWords.of(one, turn.about().ruling().orElseThrow())).orElse(""),
                list.map(one -> Judge.judge(turn.about().ruling().orElseThrow(), one, then)));
    }
}
