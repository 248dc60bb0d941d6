package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.cantonment.desk.eras.Cupboard;
import org.cantonment.desk.judging.Cases;
import org.cantonment.desk.judging.ListCase;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Borrow;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Content;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;

/** Turns lists and wishes of one player into what is to be fielded. */
final class Aims {
    private static final Id ALSO = Id.of("also");
    private static final int MOST = 10_000;

    private final Meanings meanings;
    private final Cases cases;
    private final Player player;
    private final String title;
    private final Catalogue catalogue;
    private final Optional<Campaign> campaign;
    private final List<String> remarks = new ArrayList<>();

    Aims(Meanings meanings, Player player, Catalogue catalogue) {
        this.meanings = meanings;
        this.cases = Cases.of(meanings);
        this.player = player;
        this.title = ListTitle.player(player.id(), meanings);
        this.catalogue = catalogue;
        this.campaign = meanings.campaignOf(player.id());
    }

    /** What was taken into account and cannot be seen in the plan, in whole sentences. */
    List<String> remarks() {
        return remarks;
    }

    ListCase about(ForceList list) {
        return cases.of(list);
    }

    /** A list as something to be fielded in a stage. */
    Aim of(ForceList list, int stage) throws Unclear {
        ListCase about = cases.of(list);
        if (about.ruling().isEmpty()) {
            throw new Unclear(ListTitle.of(list, meanings) + ": " + about.unclear().get(about.unclear().size() - 1).message());
        }
        List<Requirement> needs = Requirements.of(about.ruling().get(), list, about.situation().contingents());
        String name = ListTitle.of(list, meanings);
        return new Aim(new Target(list.id(), name, stage, withoutBorrowed(list, name, needs),
                allowance(list, about.ruling().get())), Optional.of(list));
    }

    Allowance allowance(ForceList list, Ruling ruling) {
        return new Cupboard(catalogue, Supply.NONE, cases.booksOf(list), campaign).allowance(ruling);
    }

    /** What is borrowed stands where it is asked for by name. */
    private List<Requirement> withoutBorrowed(ForceList list, String name, List<Requirement> needs) {
        List<Requirement> left = new ArrayList<>(needs);
        for (Borrow borrow : list.borrowed()) {
            String from = borrow.lender().map(lender -> ListTitle.player(lender, meanings)).orElse("the club");
            for (Content thing : borrow.things()) {
                int stands = take(left, thing.what(), thing.count());
                if (stands > 0) {
                    remarks.add(name + " borrows " + stands + " " + catalogue.title(thing.what()) + " from " + from
                            + "; that need not be bought.");
                }
            }
        }
        return left;
    }

    private int take(List<Requirement> needs, Id what, int count) {
        int stands = 0;
        for (int i = 0; i < needs.size() && stands < count; i++) {
            Requirement need = needs.get(i);
            if (catalogue.meant(need.anyOf()).contains(what)) {
                int here = Math.min(need.count(), count - stands);
                stands += here;
                needs.set(i, new Requirement(need.entry(), need.unit(), need.count() - here, need.anyOf()));
            }
        }
        needs.removeIf(need -> need.count() == 0);
        return stands;
    }

    /** Things wanted beside the lists. */
    Optional<Aim> also(List<String> words, int stage) throws Unclear {
        List<Requirement> needs = new ArrayList<>();
        Names names = new Names(meanings);
        for (String word : words) {
            String[] parts = word.strip().split("\\s+", 2);
            boolean counted = parts.length == 2 && parts[0].matches("[0-9]{1,5}");
            int count = counted ? Integer.parseInt(parts[0]) : 1;
            if (count < 1 || count > MOST) {
                throw new Unclear("'" + word + "': a number from 1 to " + MOST + " can be wanted.");
            }
            Id what = names.thing(counted ? parts[1] : word.strip());
            needs.add(new Requirement(ALSO.line(needs.size() + 1), count, List.of(what)));
        }
        return needs.isEmpty() ? Optional.empty() : Optional.of(new Aim(new Target(ALSO, title + ", besides", stage,
                needs, Allowance.EXACT), Optional.empty()));
    }

    List<Aim> of(List<String> lists, List<String> also, Function<ForceList, String> files, java.time.LocalDate day)
            throws Unclear {
        List<Aim> aims = new ArrayList<>();
        if (!lists.isEmpty() || also.isEmpty()) {
            for (ForceList list : new ListChoice(meanings, player, title, files).of(lists, day)) {
                aims.add(of(list, 0));
            }
        }
        also(also, 0).ifPresent(aims::add);
        return aims;
    }
}
