package org.cantonment.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.check.Aftermath;
import org.cantonment.rules.check.AlwaysCheck;
import org.cantonment.rules.check.BilletCheck;
import org.cantonment.rules.check.BoundCheck;
import org.cantonment.rules.check.Case;
import org.cantonment.rules.check.Check;
import org.cantonment.rules.check.ContinuityCheck;
import org.cantonment.rules.check.CountCheck;
import org.cantonment.rules.check.Fills;
import org.cantonment.rules.check.MendLabels;
import org.cantonment.rules.check.OptionCheck;
import org.cantonment.rules.check.PermissionCheck;
import org.cantonment.rules.check.PointsCheck;
import org.cantonment.rules.check.Sink;
import org.cantonment.rules.check.Standing;
import org.cantonment.rules.check.StrengthCheck;
import org.cantonment.rules.check.SupportCheck;
import org.cantonment.rules.check.TakingCheck;
import org.cantonment.rules.muster.Billeting;
import org.cantonment.rules.muster.Layout;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.muster.Supporting;
import org.cantonment.rules.muster.Tally;
import org.cantonment.rules.view.Basis;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.cantonment.rules.view.SupportView;

/** Judges lists. Holds no state: one judge serves all threads. */
public final class Judge {

    private static final List<Check> CHECKS = List.of(new CountCheck(), new PointsCheck(), new StrengthCheck(),
            new OptionCheck(), new PermissionCheck(), new BilletCheck(), new SupportCheck(), new BoundCheck(),
            new TakingCheck(), new ContinuityCheck(), new AlwaysCheck());

    private Judge() {
    }

    /**
     * Judges a list by a ruling. Entries whose unit the ruling does not know are passed over.
     *
     * @param ruling the rules as they stand in the list's era and round
     * @param situation the limit, the player, dispensations and the like
     * @throws org.cantonment.domain.common.Cancelled if the situation's token says so
     */
    public static Verdict judge(Ruling ruling, ForceList list, Situation situation) {
        return judge(list, layouts(ruling, list, situation), situation, true);
    }

    /** The same without any mends, for who asks about many lists and only wants to know what is wrong with them. */
    public static Verdict bare(Ruling ruling, ForceList list, Situation situation) {
        return judge(list, layouts(ruling, list, situation), situation, false);
    }

    /**
     * The same for who has laid the list out already.
     *
     * @param layouts of the list without its contingents, and of each contingent under its own rules
     */
    public static Verdict bare(ForceList list, List<Layout> layouts, Situation situation) {
        return judge(list, layouts, situation, false);
    }

    private static List<Layout> layouts(Ruling ruling, ForceList list, Situation situation) {
        List<Layout> layouts = new ArrayList<>();
        layouts.add(Layout.of(Muster.of(ruling, list.id(), list.body()), situation.cancel()));
        for (Contingent contingent : list.contingents()) {
            Ruling own = situation.contingents().getOrDefault(contingent.id(), ruling);
            layouts.add(Layout.of(Muster.of(own, contingent.id(), contingent.body()), situation.cancel()));
        }
        return layouts;
    }

    private static Verdict judge(ForceList list, List<Layout> layouts, Situation situation, boolean mending) {
        List<Muster> musters = layouts.stream().map(Layout::muster).toList();
        long used = 0;
        for (Muster muster : musters) {
            used += muster.tally().points();
        }
        List<Basis> findings = new ArrayList<>();
        List<Placing> placings = new ArrayList<>();
        for (int i = 0; i < musters.size(); i++) {
            situation.cancel().check();
            OptionalInt own = i == 0 ? OptionalInt.empty() : list.contingents().get(i - 1).points();
            List<Muster> others = new ArrayList<>(musters);
            others.remove(i);
            Case about = new Case(list, layouts.get(i), others, own.isPresent() ? own : situation.points(), used,
                    own.isPresent(), situation, new Fills(musters.get(i).ruling(), situation), new Standing());
            findings.addAll(judge(about, i > 0 && own.isEmpty(), mending));
            place(layouts.get(i), placings);
        }
        findings.sort(null);
        List<Tally> tallies = musters.stream().map(Muster::tally).toList();
        return new Verdict(findings, tallies.get(0), tallies.subList(1, tallies.size()), placings);
    }

    private static List<Basis> judge(Case about, boolean countedAbove, boolean mending) {
        Sink sink = new Sink(about.situation(), about.muster().ruling(), mending);
        for (Check check : CHECKS) {
            if (!(countedAbove && check instanceof PointsCheck)) {
                check.check(about, sink);
            }
        }
        Aftermath.clear(about.muster(), sink.findings());
        if (mending) {
            MendLabels.tell(about.muster(), sink.findings());
        }
        return sink.findings();
    }

    private static void place(Layout layout, List<Placing> placings) {
        for (Billeting billeting : layout.billetings()) {
            List<BilletView> billets = billeting.formation().formation().billets();
            for (int i = 0; i < billeting.children().size(); i++) {
                for (int b = 0; b < billets.size(); b++) {
                    place(billeting.children().get(i), billeting.placement().where()[i][b], billets.get(b).rule(),
                            billets.get(b).title(), placings);
                }
            }
        }
        Supporting supporting = layout.supporting();
        for (int i = 0; i < supporting.children().size(); i++) {
            for (SupportView support : layout.muster().ruling().supports()) {
                place(supporting.children().get(i), supporting.placement().where()[i][support.index()], support.id(),
                        support.title(), placings);
            }
        }
    }

    private static void place(Node node, int count, Id where, String title,
            List<Placing> placings) {
        if (count > 0) {
            placings.add(new Placing(node.entry().id(), count, where, title));
        }
    }
}
