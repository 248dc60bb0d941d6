package org.cantonment.desk.shopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.force.ForceList;
import org.cantonment.notation.form.Near;

/** Which of the lists typed words mean. */
final class ListChoice {
    private static final int MOST_ROUND = 1_000;
    private static final String ENDING = ".list";

    private final Meanings meanings;
    private final Player player;
    private final String title;
    private final Function<ForceList, String> files;

    /** @param files the name of a list's file, without its folder; empty if it has none */
    ListChoice(Meanings meanings, Player player, String title, Function<ForceList, String> files) {
        this.meanings = meanings;
        this.player = player;
        this.title = title;
        this.files = files;
    }

    /** The lists that these words mean, none twice; without words those that are still to be played. */
    List<ForceList> of(List<String> words, LocalDate day) throws Unclear {
        if (words.isEmpty()) {
            return coming(day);
        }
        Set<ForceList> lists = new LinkedHashSet<>();
        for (String word : words) {
            Optional<List<Integer>> rounds = rounds(word);
            if (rounds.isPresent()) {
                for (int round : rounds.get()) {
                    lists.add(ofRound(round));
                }
            } else {
                lists.add(named(word));
            }
        }
        return List.copyOf(lists);
    }

    private List<ForceList> coming(LocalDate day) throws Unclear {
        List<Round> rounds = meanings.campaignOf(player.id()).map(Campaign::rounds).orElse(List.of());
        List<ForceList> coming = meanings.listsOf(player.id()).stream().filter(list -> list.round().isPresent())
                .filter(list -> rounds.stream().noneMatch(round -> round.number() == list.round().getAsInt()
                        && round.play().isPresent() && round.play().get().to().isBefore(day))).toList();
        if (coming.isEmpty()) {
            throw new Unclear(title + " has no list that is still to be played after " + day
                    + ": say with '--lists' what it is for.");
        }
        return coming;
    }

    private ForceList ofRound(int round) throws Unclear {
        return ofRound(meanings, player, round).orElseThrow(() -> new Unclear(title + " has no list for round " + round
                + "; there are lists for " + numbers() + "."));
    }

    /** The list of a player for a round. */
    static Optional<ForceList> ofRound(Meanings meanings, Player player, int round) {
        return meanings.listsOf(player.id()).stream()
                .filter(list -> list.round().isPresent() && list.round().getAsInt() == round).findFirst();
    }

    private String numbers() {
        List<String> numbers = meanings.listsOf(player.id()).stream().filter(list -> list.round().isPresent())
                .map(list -> String.valueOf(list.round().getAsInt())).distinct().toList();
        return numbers.isEmpty() ? "none" : (numbers.size() == 1 ? "round " : "rounds ") + String.join(", ", numbers);
    }

    private ForceList named(String word) throws Unclear {
        List<ForceList> all = meanings.lists();
        String bare = word.endsWith(ENDING) ? word.substring(0, word.length() - ENDING.length()) : word;
        String file = bare.substring(Math.max(bare.lastIndexOf('/'), bare.lastIndexOf('\\')) + 1);
        for (ForceList list : all) {
            if (list.id().text().equalsIgnoreCase(bare) || files.apply(list).equalsIgnoreCase(file + ENDING)) {
                if (list.player().isPresent() && !list.player().get().equals(player.id())) {
                    throw new Unclear("'" + word + "' is no list of " + title + "'s.");
                }
                return list;
            }
        }
        List<String> known = all.stream().filter(list -> list.player().isEmpty()
                || list.player().get().equals(player.id())).map(files).filter(name -> !name.isEmpty()).sorted().toList();
        throw new Unclear("There is no list '" + word + "' here." + Near.of(file + ENDING, known)
                .map(near -> " Did you mean '" + near + "'?").orElse(" Write a round, as 3, or rounds, as 3-5, or a file."));
    }

    /**
     * "3" or "3-5" as rounds; empty if a word is neither.
     *
     * @throws Unclear if it is a span that makes no sense
     */
    static Optional<List<Integer>> rounds(String word) throws Unclear {
        String[] ends = word.split("-", -1);
        if (ends.length > 2 || !List.of(ends).stream().allMatch(end -> end.matches("[0-9]{1,4}"))) {
            return Optional.empty();
        }
        int from = Integer.parseInt(ends[0]);
        int to = Integer.parseInt(ends[ends.length - 1]);
        if (from < 1 || to < from || to > MOST_ROUND) {
            throw new Unclear("'" + word + "' is no span of rounds; write it like 3-5.");
        }
        List<Integer> rounds = new ArrayList<>();
        for (int round = from; round <= to; round++) {
            rounds.add(round);
        }
        return Optional.of(rounds);
    }
}
