package org.cantonment.desk.turnout;

import java.lang.System.Logger;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

import org.cantonment.desk.judging.ListCase;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.judging.Stores;
import org.cantonment.desk.turnout.Fielding.Asked;
import org.cantonment.desk.turnout.Fielding.Terms;
import org.cantonment.desk.turnout.Fielding.Unclear;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;

/**
 * What is short in lists whose round asks for a turnout, kept until something it hangs on has changed; and what cannot be
 * as shelves and weeks say. A round asks with {@code turnout 100 percent}; where none does, nobody is told anything. Not for
 * several threads at once.
 */
public final class Shortages {
    /** The code of a list that its player's shelf cannot field as far as the round asks. */
    public static final String SHORT = "turnout.short";

    private static final Logger LOG = System.getLogger(Shortages.class.getName());
    private static final int HUNDRED = 100;

    private record Kept(ListCase about, Supply supply, Object ranges, List<Finding> findings) {
    }

    private final Map<ForceList, Kept> kept = new IdentityHashMap<>();
    private Meanings last;
    private Fielding fielding;
    private List<Finding> ofBooks;
    private int count;

    /**
     * Brings everything up to date.
     *
     * @param asked which lists are asked about
     * @param cases what each list is judged by; empty if it is under no rules
     * @throws Cancelled if the token says so
     */
    public void bringUpToDate(Meanings meanings, Predicate<ForceList> asked, Function<ForceList, Optional<ListCase>> cases,
            CancelToken cancel) {
        if (fielding == null || !sameWorld(meanings, last)) {
            fielding = new Fielding(meanings);
            ofBooks = null;
        } else {
            fielding.renew(meanings);
        }
        last = meanings;
        kept.keySet().retainAll(meanings.lists());
        for (ForceList list : meanings.lists()) {
            Optional<Campaign> campaign = list.player().flatMap(meanings::campaignOf);
            Optional<Round> round = Stores.round(list, campaign);
            if (asked.test(list) && round.filter(one -> one.turnoutPercent().isPresent()).isPresent() && fielding.knows(list)) {
                cancel.check();
                cases.apply(list).filter(about -> about.ruling().isPresent())
                        .ifPresent(about -> keep(about, campaign.orElseThrow(), round.get(), cancel));
            } else {
                kept.remove(list);
            }
        }
    }

    /** How many lists have been asked about since the beginning, each time counted. */
    public int count() {
        return count;
    }

    /** What is short in a list. */
    public List<Finding> of(ForceList list) {
        return Optional.ofNullable(kept.get(list)).map(Kept::findings).orElse(List.of());
    }

    /** Where shelves and weeks say what cannot be. */
    public List<Finding> ofBooks() {
        if (ofBooks == null) {
            Set<Finding> found = new LinkedHashSet<>();
            for (Shelf shelf : last.shelves()) {
                found.addAll(Supply.of(fielding.catalogue(), List.of(shelf)).findings());
            }
            for (Campaign campaign : last.campaigns()) {
                found.addAll(fielding.inventory(Optional.of(campaign), AsOf.NOW).findings());
                campaign.players().forEach(player -> found.addAll(Stores.roll(last, Optional.of(campaign))
                        .of(player.id(), OptionalInt.empty(), AsOf.NOW).findings()));
            }
            ofBooks = List.copyOf(found);
        }
        return ofBooks;
    }

    private static boolean sameWorld(Meanings now, Meanings before) {
        return same(now.ranges(), before.ranges()) && same(now.ruleSets(), before.ruleSets())
                && same(now.campaigns(), before.campaigns()) && same(now.shelves(), before.shelves())
                && same(now.weeks(), before.weeks()) && same(now.names(), before.names());
    }

    private static boolean same(List<?> some, List<?> others) {
        boolean same = some.size() == others.size();
        for (int i = 0; same && i < some.size(); i++) {
            same = some.get(i) == others.get(i);
        }
        return same;
    }

    private void keep(ListCase about, Campaign campaign, Round round, CancelToken cancel) {
        Supply supply = fielding.inventory(Optional.of(campaign), Stores.when(about.list(), Optional.of(campaign),
                Terms.USUAL.week())).of(about.list().player().orElseThrow());
        Kept before = kept.get(about.list());
        boolean holds = before != null && before.about().equals(about) && before.supply().equals(supply)
                && before.ranges() == fielding.catalogue();
        if (!holds) {
            kept.put(about.list(), new Kept(about, supply, fielding.catalogue(), ask(about, round, cancel)));
        }
    }

    private List<Finding> ask(ListCase about, Round round, CancelToken cancel) {
        count++;
        try {
            Asked asked = fielding.bare(about, Terms.USUAL);
            Turnout turnout = Depot.of(fielding.catalogue(), asked.supply(), asked.answer().task().allowance())
                    .turnout(asked.answer().task().needs(), cancel);
            int percent = round.turnoutPercent().orElse(0);
            return (long) turnout.filled() * HUNDRED >= (long) percent * turnout.needed() ? List.of()
                    : findings(asked.answer().with(turnout), percent);
        } catch (Unclear e) {
            return List.of();
        } catch (Cancelled e) {
            throw e;
        } catch (RuntimeException | StackOverflowError e) {
            LOG.log(Logger.Level.ERROR, "A turnout could not be worked out: " + about.list().id(), e);
            return List.of(Finding.of("list.failed", Severity.BREACH, about.list().id(),
                    "What of this list can be fielded could not be worked out, by a fault of the program and not of yours."));
        }
    }

    private static List<Finding> findings(ListTurnout answer, int percent) {
        TurnoutText text = new TurnoutText(answer);
        List<Finding> findings = new ArrayList<>();
        List<String> words = text.reasons();
        for (int i = 0; i < words.size(); i++) {
            Reason reason = answer.turnout().reasons().get(i);
            Requirement at = reason.needs().stream().filter(need -> need.count() > answer.turnout().filled(need)).findFirst()
                    .orElse(reason.needs().get(0));
            String asks = i > 0 ? "" : " In all " + answer.turnout().filled() + " of " + answer.turnout().needed()
                    + " pieces stand; the round asks for " + percent + " percent.";
            findings.add(new Finding(SHORT, Severity.CAUTION, at.entry(), Optional.empty(), words.get(i) + asks,
                    List.of(new Mend("Leave out " + answer.name(at.entry()), List.of(new RemoveEntry(at.entry()))),
                            Mend.advice("Get " + text.closes(reason)))));
        }
        return findings;
    }
}
