package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Range;
import org.cantonment.notation.form.Near;

/** Finds what a typed word means: by name, by a code, by what people call it. */
public final class Names {
    private final Meanings meanings;

    /** Of these books. */
    public Names(Meanings meanings) {
        this.meanings = meanings;
    }

    /**
     * The player that a word means.
     *
     * @throws Unclear if it means none
     */
    public Player player(String word) throws Unclear {
        List<Player> players = meanings.campaigns().stream().flatMap(campaign -> campaign.players().stream()).toList();
        if (players.isEmpty()) {
            throw new Unclear("There is no campaign with players in this folder.");
        }
        return one("player", word, players, player -> List.of(player.id().name(),
                ListTitle.player(player.id(), meanings)), Player::id);
    }

    /**
     * The box, bundle or lot that a word means.
     *
     * @throws Unclear if it means none, or several
     */
    public Id box(String word) throws Unclear {
        List<Titled> all = new ArrayList<>();
        for (Range range : meanings.ranges()) {
            all.addAll(range.boxes());
            range.sellers().forEach(seller -> all.addAll(seller.lots()));
        }
        if (all.isEmpty()) {
            throw new Unclear("There is no range with boxes in this folder.");
        }
        return one("box", word, all, Names::calledAs, Titled::id).id();
    }

    private static List<String> calledAs(Titled box) {
        List<String> called = new ArrayList<>(List.of(box.id().name(), box.title()));
        if (box instanceof Box sold) {
            called.addAll(sold.codes());
        }
        return called;
    }

    /**
     * The makers and sellers that words mean.
     *
     * @throws Unclear if one means none, or several
     */
    public Set<Id> sellers(List<String> words) throws Unclear {
        List<Titled> all = new ArrayList<>();
        for (Range range : meanings.ranges()) {
            all.add(range);
            all.addAll(range.sellers());
        }
        Set<Id> sellers = new TreeSet<>();
        for (String word : words) {
            sellers.add(one("maker or seller", word, all, one -> List.of(one.id().name(), one.title()), Titled::id).id());
        }
        return sellers;
    }

    /**
     * The piece, part, family or extra that a word means.
     *
     * @throws Unclear if it means none, or several
     */
    public Id thing(String word) throws Unclear {
        List<Titled> all = new ArrayList<>();
        for (Range range : meanings.ranges()) {
            all.addAll(range.pieces());
            all.addAll(range.families());
            all.addAll(range.parts());
            all.addAll(range.extras());
        }
        return one("piece, part or extra", word, all, one -> List.of(one.id().name(), one.title()), Titled::id).id();
    }

    private static <T> T one(String kind, String word, List<T> all, Function<T, List<String>> called, Function<T, Id> id)
            throws Unclear {
        List<T> meant = all.stream().filter(each -> id.apply(each).text().equalsIgnoreCase(word)
                || called.apply(each).stream().anyMatch(word::equalsIgnoreCase)).toList();
        if (meant.size() == 1) {
            return meant.get(0);
        }
        if (meant.isEmpty()) {
            Optional<String> near = Near.of(word, all.stream().flatMap(each -> called.apply(each).stream()).distinct().sorted()
                    .toList());
            throw new Unclear("There is no " + kind + " '" + word + "' here."
                    + near.map(name -> " Did you mean '" + name + "'?").orElse(""));
        }
        throw new Unclear("'" + word + "' may be " + String.join(" or ", meant.stream().map(each -> id.apply(each).text())
                .toList()) + "; write one of these.");
    }
}
