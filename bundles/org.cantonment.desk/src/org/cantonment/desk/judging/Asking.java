package org.cantonment.desk.judging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.rules.guest.Circumstances;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Guests.Said;

/**
 * Asks the checks that campaigns turn on, and keeps what they said: one is asked about a list again only if something that
 * it may look at has changed, or the check itself. Not for several threads at once.
 */
final class Asking {

    /** What a question stands on, compared by identity: records that nobody changed are the same objects. */
    record Ground(Judging.Judged judged, Campaign campaign, List<RuleSet> books, List<ForceList> earlier,
            List<Shelf> shelves) {

        boolean sameAs(Ground other) {
            return other != null && judged == other.judged && campaign == other.campaign
                    && same(books, other.books) && same(earlier, other.earlier) && same(shelves, other.shelves);
        }

        private static boolean same(List<?> some, List<?> others) {
            boolean same = some.size() == others.size();
            for (int i = 0; same && i < some.size(); i++) {
                same = some.get(i) == others.get(i);
            }
            return same;
        }
    }

    private record Kept(Ground ground, Map<CheckUse, Said> said) {
    }

    private final Guests guests;
    private final Map<ForceList, Kept> kept = new IdentityHashMap<>();

    Asking(Guests guests) {
        this.guests = guests;
    }

    /** Asks about a list whatever is not known yet. @param judged what our own judge said of it */
    void ask(Judging.Judged judged, Meanings meanings, CancelToken cancel) {
        ForceList list = judged.about().list();
        Campaign campaign = list.player().flatMap(meanings::campaignOf).filter(one -> !one.checks().isEmpty())
                .orElse(null);
        if (campaign == null || judged.verdict().isEmpty()) {
            kept.remove(list);
            return;
        }
        Ground ground = ground(judged, campaign, meanings);
        Kept before = kept.get(list);
        Map<CheckUse, Said> said = new HashMap<>();
        List<CheckUse> open = new ArrayList<>();
        for (CheckUse use : campaign.checks()) {
            Said known = before == null || !ground.sameAs(before.ground()) ? null : before.said().get(use);
            if (known != null && stands(known)) {
                said.put(use, known);
            } else if (covers(use, judged.about())) {
                open.add(use);
            }
        }
        if (!open.isEmpty()) {
            guests.ask(open, circumstances(ground, cancel)).forEach(one -> said.put(one.use(), one));
        }
        kept.put(list, new Kept(ground, said));
    }

    private static boolean covers(CheckUse use, ListCase about) {
        return about.ruling().filter(ruling -> use.when().covers(ruling.occasion(), ruling.eras())).isPresent();
    }

    private boolean stands(Said said) {
        return guests.known(said.check().name()).filter(said.check()::equals).isPresent();
    }

    static Ground ground(Judging.Judged judged, Campaign campaign, Meanings meanings) {
        ForceList list = judged.about().list();
        Id player = list.player().orElseThrow();
        List<ForceList> earlier = list.round().isEmpty() ? List.of() : meanings.listsOf(player).stream()
                .filter(other -> other.round().isPresent() && other.round().getAsInt() < list.round().getAsInt()).toList();
        List<Shelf> shelves = meanings.shelves().stream().filter(shelf -> shelf.owners().contains(player)).toList();
        return new Ground(judged, campaign,
                meanings.closure(list.rules().isEmpty() ? campaign.plays() : list.rules()), earlier, shelves);
    }

    static Circumstances circumstances(Ground ground, CancelToken cancel) {
        Judging.Judged judged = ground.judged();
        return new Circumstances(ground.campaign(), judged.about().list(), ground.books(),
                judged.about().ruling().orElseThrow(), judged.about().situation(), judged.verdict().orElseThrow(),
                ground.earlier(), ground.shelves(), cancel);
    }

    /** What was found in a list, in the order of the campaign's lines; nothing of a check that was shut out since. */
    List<Finding> of(ForceList list) {
        Kept known = kept.get(list);
        if (known == null) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        for (CheckUse use : known.ground().campaign().checks()) {
            Optional.ofNullable(known.said().get(use)).filter(this::stands)
                    .ifPresent(said -> findings.addAll(said.findings()));
        }
        return findings;
    }

    /** What is to be said at the lines of campaigns. */
    List<Finding> ofLines(List<Campaign> campaigns) {
        List<Finding> findings = new ArrayList<>();
        campaigns.forEach(campaign -> findings.addAll(guests.ofLines(campaign.checks())));
        return findings;
    }

    /** What is to be said at the lines that hold for a list. */
    List<Finding> ofLines(Judging.Judged judged, Meanings meanings) {
        List<CheckUse> uses = uses(judged.about(), meanings);
        return uses.isEmpty() ? List.of() : guests.ofLines(uses);
    }

    /** The lines of a list's campaign that turn on checks at the list's time. */
    static List<CheckUse> uses(ListCase about, Meanings meanings) {
        return about.campaign().isEmpty() ? List.of() : meanings.campaigns().stream()
                .filter(campaign -> campaign.id().equals(about.campaign().get()))
                .flatMap(campaign -> campaign.checks().stream()).filter(use -> covers(use, about)).toList();
    }

    /** Forgets all lists but these. */
    void keepOnly(Set<ForceList> lists) {
        kept.keySet().retainAll(lists);
    }
}
