package org.cantonment.desk.judging;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.view.Basis;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Ruling;

/**
 * Limits that held all season and never once spoke: no list was a breach, a caution or a note by them, also none that a
 * dispensation covers. What a layer says of a limit is looked at by itself. A season is told of when lists are in for more
 * than half of its rounds and for three at least; a limit that held in none of those rounds is not told of.
 */
final class Silence {
    /** Limits of a book that never spoke in a campaign. */
    static final String CODE = "limit.silent";

    private static final int LEAST_ROUNDS = 3;
    private static final int MOST_NAMES = 8;
    private static final String NO_BASE = "limit.no-base";

    private final Campaign campaign;
    private final List<Judged> lists;
    private final Map<Id, String> held = new TreeMap<>();
    private final Set<Id> spoke = new HashSet<>();

    private Silence(Campaign campaign, List<Judged> lists) {
        this.campaign = campaign;
        this.lists = lists;
    }

    /** One note for each book with such limits and each campaign, at the first of them. */
    static List<Finding> in(List<Campaign> campaigns, Collection<Judged> judged) {
        List<Finding> findings = new ArrayList<>();
        for (Campaign campaign : campaigns) {
            List<Judged> lists = judged.stream().filter(one -> one.verdict().isPresent()
                    && one.about().campaign().filter(campaign.id()::equals).isPresent()).toList();
            long rounds = campaign.rounds().stream().filter(round -> lists.stream().anyMatch(one ->
                    one.about().occasion().round().equals(OptionalInt.of(round.number())))).count();
            if (rounds >= LEAST_ROUNDS && 2 * rounds > campaign.rounds().size()) {
                findings.addAll(new Silence(campaign, lists).findings());
            }
        }
        return findings;
    }

    private List<Finding> findings() {
        Set<Ruling> seen = new HashSet<>();
        for (Judged one : lists) {
            one.about().ruling().filter(seen::add).ifPresent(this::holds);
            one.verdict().get().bases().forEach(this::speaks);
        }
        Map<String, List<Id>> silent = new TreeMap<>();
        held.keySet().stream().filter(id -> !spoke.contains(id))
                .forEach(id -> silent.computeIfAbsent(id.book(), book -> new ArrayList<>()).add(id));
        return silent.values().stream().map(this::finding).toList();
    }

    private void holds(Ruling ruling) {
        for (LimitView limit : ruling.limits()) {
            for (LimitLine line : limit.lines()) {
                held.putIfAbsent(card(line.id()), limit.title());
            }
        }
    }

    private void speaks(Basis basis) {
        if (!basis.finding().code().equals(NO_BASE)) {
            spoke.add(basis.card());
            basis.finding().rule().map(Silence::card).ifPresent(spoke::add);
        }
    }

    // A line's card: the limit itself, or what a layer says of it.
    private static Id card(Id line) {
        int sign = line.text().lastIndexOf('#');
        return sign <= 0 ? line : Id.of(line.text().substring(0, sign));
    }

    private Finding finding(List<Id> silent) {
        Set<String> others = new LinkedHashSet<>();
        silent.stream().skip(1).map(held::get).forEach(others::add);
        others.remove(held.get(silent.get(0)));
        String more = others.isEmpty() ? "" : " Nor did others of this book: " + names(List.copyOf(others)) + '.';
        return Finding.of(CODE, Severity.NOTE, silent.get(0), held.get(silent.get(0)) + ": in the " + lists.size()
                + " lists of " + campaign.title() + " this limit never had anything to say." + more);
    }

    private static String names(List<String> names) {
        int shown = Math.min(names.size(), MOST_NAMES);
        String text = String.join("; ", names.subList(0, shown));
        return shown == names.size() ? text : text + "; and " + (names.size() - shown) + " more";
    }
}
