package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.MoveEntry;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Unpin;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Basis;

/**
 * Lets labels of mends tell which line they mean, where several lines read alike: by the line's own name, else by its
 * number among its like. A mend of the very line that the finding points at need not say so, unless another mend of the
 * finding would read the same.
 */
public final class MendLabels {

    private static final List<String> NUMBERS = List.of("first", "second", "third", "fourth", "fifth", "sixth",
            "seventh", "eighth", "ninth", "tenth");

    private final Map<Id, Node> nodes = new HashMap<>();
    private final Map<String, List<Node>> alike = new HashMap<>();

    private MendLabels(Muster muster) {
        for (Node node : muster.nodes()) {
            if (node.choice() != null) {
                nodes.put(node.entry().id(), node);
                alike.computeIfAbsent(Words.entry(node), any -> new ArrayList<>(1)).add(node);
            }
        }
    }

    /** Makes all labels of each finding's mends differ. */
    public static void tell(Muster muster, List<Basis> findings) {
        MendLabels labels = null;
        for (int i = 0; i < findings.size(); i++) {
            Basis basis = findings.get(i);
            if (!basis.finding().mends().isEmpty()) {
                labels = labels == null ? new MendLabels(muster) : labels;
                findings.set(i, new Basis(labels.told(basis.finding()), basis.card(), basis.subject()));
            }
        }
    }

    private Finding told(Finding finding) {
        Set<Mend> mends = new LinkedHashSet<>(finding.mends());
        Set<String> seen = new HashSet<>();
        Set<String> twice = new HashSet<>();
        mends.forEach(mend -> {
            if (!seen.add(mend.label())) {
                twice.add(mend.label());
            }
        });
        List<Mend> told = new ArrayList<>();
        Set<String> given = new HashSet<>();
        for (Mend mend : mends) {
            boolean own = place(mend).filter(finding.at()::equals).isPresent() && !twice.contains(mend.label());
            String label = own ? mend.label() : place(mend).map(nodes::get).map(node -> with(mend.label(), which(node, mend)))
                    .orElse(mend.label());
            String free = label;
            for (int n = 2; !given.add(free); n++) {
                free = with(label, "way " + n);
            }
            told.add(new Mend(free, mend.actions()));
        }
        return finding.withMends(told);
    }

    /** Says something more in a label, before its full stop. */
    public static String with(String label, String more) {
        if (more.isEmpty()) {
            return label;
        }
        String bare = label.endsWith(".") ? label.substring(0, label.length() - 1) : label;
        String end = label.endsWith(".") ? "." : "";
        return bare.endsWith(")") ? bare.substring(0, bare.length() - 1) + "; " + more + ')' + end
                : bare + " (" + more + ')' + end;
    }

    private String which(Node node, Mend mend) {
        List<Node> like = alike.get(Words.entry(node));
        if (like.size() < 2) {
            return "";
        }
        int number = like.indexOf(node);
        String ordinal = number < NUMBERS.size() ? "the " + NUMBERS.get(number) : "number " + (number + 1);
        boolean into = mend.actions().stream().anyMatch(AddUnit.class::isInstance);
        return (into ? "to " : "") + node.entry().alias().orElse((into ? Words.entry(node) + ", " : "") + ordinal);
    }

    private static Optional<Id> place(Mend mend) {
        return mend.actions().stream().map(MendLabels::place).flatMap(Optional::stream).findFirst();
    }

    private static Optional<Id> place(Action action) {
        if (action instanceof RemoveEntry remove) {
            return Optional.of(remove.entry());
        }
        if (action instanceof SetCount set) {
            return Optional.of(set.entry());
        }
        if (action instanceof SetStrength set) {
            return Optional.of(set.entry());
        }
        if (action instanceof SetOption set) {
            return Optional.of(set.entry());
        }
        if (action instanceof ReplaceUnit replace) {
            return Optional.of(replace.entry());
        }
        if (action instanceof MoveEntry move) {
            return Optional.of(move.entry());
        }
        if (action instanceof Unpin unpin) {
            return Optional.of(unpin.entry());
        }
        return action instanceof AddUnit add ? Optional.of(add.parent()) : Optional.empty();
    }
}
