package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/**
 * All lists of an evening against all that is there: who lends what to whom so that all can play. Fewest lenders first,
 * then fewest pieces lent, then the truest; of lenders as few, those who come first. Spare pieces are not worked over for
 * others, so conversions do not count here.
 *
 * @param loans who lends what to whom, in the order of the lists
 * @param turnout who stands where; its types are plain
 * @param fewest whether no fewer lenders will do, proven
 */
public record Muster(List<Loan> loans, Turnout turnout, boolean fewest) {

    private static final int MOST_TRIALS = 5_000;

    public Muster {
        loans = List.copyOf(loans);
    }

    /**
     * Musters everybody.
     *
     * @param parties who plays or may lend, each once, whom to ask first first
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static Muster of(Catalogue catalogue, Allowance allowance, List<Party> parties, CancelToken cancel) {
        return new Evening(catalogue, allowance.withoutConversions(), parties, cancel).muster();
    }

    private static final class Evening {
        private final Catalogue catalogue;
        private final Allowance allowance;
        private final List<Party> parties;
        private final CancelToken cancel;
        private final Map<Id, Id> players = new HashMap<>();
        private final Map<Id, Map<Id, Id>> owned = new HashMap<>();
        private final Map<Id, Loan> plain = new HashMap<>();
        private final List<Requirement> needs = new ArrayList<>();
        private Supply all = Supply.NONE;
        private int trials;

        Evening(Catalogue catalogue, Allowance allowance, List<Party> parties, CancelToken cancel) {
            this.catalogue = catalogue;
            this.allowance = allowance;
            this.parties = parties;
            this.cancel = cancel;
            for (Party party : parties) {
                party.needs().forEach(need -> players.put(need.entry(), party.who()));
                needs.addAll(party.needs());
                all = all.plus(marked(party));
            }
        }

        /** The same supply, each type with its owner in its id. */
        private Supply marked(Party party) {
            List<Stack> stacks = party.own().stacks().stream().map(stack -> new Stack(mark(party.who(), stack.what()),
                    stack.known(), stack.guessed(), stack.unknown())).toList();
            List<Frames> frames = party.own().frames().stream().map(one -> new Frames(one.part(), one.count(),
                    one.guessed(), one.ways().stream().map(way -> marked(party.who(), way)).toList(), one.built(),
                    one.fixing())).toList();
            List<BoxCap> caps = party.own().caps().stream().map(cap -> new BoxCap(cap.cap(), cap.most(),
                    marked(party.who(), cap.of()), cap.frames())).toList();
            return new Supply(stacks, frames, caps, List.of());
        }

        private Way marked(Id owner, Way way) {
            Map<Id, Integer> gives = new TreeMap<>();
            way.gives().forEach((type, count) -> gives.put(mark(owner, type), count));
            return new Way(way.build(), gives);
        }

        private Set<Id> marked(Id owner, Set<Id> types) {
            Set<Id> all = new TreeSet<>();
            types.forEach(type -> all.add(mark(owner, type)));
            return all;
        }

        private Id mark(Id owner, Id type) {
            Id marked = Id.of(type.text() + " of " + owner.text());
            owned.computeIfAbsent(type, id -> new TreeMap<>()).put(owner, marked);
            plain.put(marked, new Loan(owner, owner, type, 0));
            return marked;
        }

        Muster muster() {
            List<Id> lenders = parties.stream().filter(party -> !party.own().equals(Supply.NONE)).map(Party::who).toList();
            boolean decided = true;
            for (int size = 0; size <= lenders.size() && trials <= MOST_TRIALS; size++) {
                Optional<Set<Id>> chosen = choose(lenders, 0, size, new TreeSet<>());
                if (chosen.isPresent()) {
                    return answer(chosen.get(), true);
                }
                decided = trials <= MOST_TRIALS;
            }
            return answer(new TreeSet<>(lenders), decided);
        }

        /** The first so many lenders, in their order, with whom everybody can play. */
        private Optional<Set<Id>> choose(List<Id> lenders, int from, int more, Set<Id> chosen) {
            if (trials > MOST_TRIALS) {
                return Optional.empty();
            }
            if (more == 0) {
                trials++;
                return depot(chosen).look(needs, Depot.BRANCHES_FOR_ENOUGH, cancel).enough()
                        ? Optional.of(new TreeSet<>(chosen)) : Optional.empty();
            }
            for (int i = from; i + more <= lenders.size(); i++) {
                chosen.add(lenders.get(i));
                Optional<Set<Id>> found = choose(lenders, i + 1, more - 1, chosen);
                if (found.isPresent()) {
                    return found;
                }
                chosen.remove(lenders.get(i));
            }
            return Optional.empty();
        }

        private Depot depot(Set<Id> lenders) {
            return Depot.of(new Store(catalogue, all, allowance, new Lending(players, owned, Set.copyOf(lenders))));
        }

        private Muster answer(Set<Id> lenders, boolean fewest) {
            Turnout marked = depot(lenders).turnout(needs, cancel);
            Map<List<Id>, Integer> lent = new LinkedHashMap<>();
            List<Posting> postings = new ArrayList<>();
            for (Posting posting : marked.postings()) {
                Loan whose = plain.get(posting.type());
                Id player = players.get(posting.need().entry());
                postings.add(new Posting(posting.need(), whose.type(), posting.count(), posting.truth(), posting.line()));
                if (!whose.from().equals(player)) {
                    lent.merge(List.of(whose.from(), player, whose.type()), posting.count(), Integer::sum);
                }
            }
            List<Loan> loans = new ArrayList<>();
            lent.forEach((who, count) -> loans.add(new Loan(who.get(0), who.get(1), who.get(2), count)));
            Turnout turnout = new Turnout(postings, marked.needed(), marked.filled(), marked.bound(), marked.truest(),
                    marked.builds(), marked.worked(), marked.guesses().stream().map(this::plainly).toList(),
                    marked.reasons().stream().map(this::plainly).toList(), marked.aside());
            return new Muster(loans, turnout, fewest && turnout.proven());
        }

        private Guess plainly(Guess guess) {
            return plain.containsKey(guess.what()) ? new Guess(plain.get(guess.what()).type(), guess.pieces()) : guess;
        }

        /** In blocks what several people have of a type is one source. */
        private Reason plainly(Reason reason) {
            if (!(reason instanceof Reason.Block block)) {
                return reason;
            }
            List<Reason.Source> from = new ArrayList<>();
            Map<Id, Integer> places = new HashMap<>();
            for (Reason.Source source : block.from()) {
                Loan whose = plain.get(source.what());
                if (whose == null) {
                    from.add(source);
                    continue;
                }
                Integer place = places.putIfAbsent(whose.type(), from.size());
                if (place == null) {
                    from.add(new Reason.Source(source.kind(), whose.type(), source.pieces(), source.perhaps(),
                            source.frames()));
                } else {
                    Reason.Source before = from.get(place);
                    from.set(place, new Reason.Source(before.kind(), before.what(), before.pieces() + source.pieces(),
                            before.perhaps() + source.perhaps(), 0));
                }
            }
            return new Reason.Block(block.needs(), from, block.needed(), block.there());
        }
    }
}
