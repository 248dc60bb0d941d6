package org.cantonment.stock.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.campaign.Converted;
import org.cantonment.domain.campaign.CountTaken;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Doing;
import org.cantonment.domain.campaign.ForThings;
import org.cantonment.domain.campaign.GaveUp;
import org.cantonment.domain.campaign.MoveVerb;
import org.cantonment.domain.campaign.Moved;
import org.cantonment.domain.campaign.PassVerb;
import org.cantonment.domain.campaign.Passed;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.shelf.Held;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Supply;

/** Books deeds that move pieces. What would take a shelf below zero is booked as far as it goes, and found. */
final class Bookings {

    /** The code of a deed that takes what is not there. */
    static final String BELOW_ZERO = "shelf.below-zero";

    private final Catalogue catalogue;
    private final Piles piles;
    private final List<Loan> loans = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Bookings(Catalogue catalogue, Piles piles) {
        this.catalogue = catalogue;
        this.piles = piles;
    }

    List<Loan> loans() {
        return loans;
    }

    List<Finding> findings() {
        return findings;
    }

    /** In which order deeds of one day are tried; less than nothing if it moves no pieces. */
    static int phase(Doing doing) {
        if (doing instanceof Moved moved) {
            return switch (moved.verb()) {
                case BOUGHT, FOUND -> 0;
                case BUILT -> 1;
                default -> -1;
            };
        }
        if (doing instanceof Passed passed) {
            return passed.verb() == PassVerb.RETURNED ? 3 : 4;
        }
        return doing instanceof Converted ? 2 : doing instanceof GaveUp ? 5 : doing instanceof CountTaken ? 6 : -1;
    }

    /** Whether all that it takes is there now. */
    boolean ready(Deed deed) {
        Optional<Id> who = Optional.of(deed.who());
        if (deed.doing() instanceof Converted converted) {
            return has(who, converted.things());
        }
        if (deed.doing() instanceof GaveUp gave) {
            return has(who, gave.things());
        }
        if (deed.doing() instanceof Passed passed) {
            return has(who, passed.things()) && has(passed.to(), exchanged(deed));
        }
        return !(deed.doing() instanceof Moved moved) || moved.verb() != MoveVerb.BUILT || has(who, moved.things());
    }

    private boolean has(Optional<Id> who, List<Held> things) {
        return things.stream().allMatch(held -> piles.has(who, held.what()) >= held.count());
    }

    private static List<Held> exchanged(Deed deed) {
        return deed.clauses().exchange().filter(ForThings.class::isInstance)
                .map(exchange -> ((ForThings) exchange).things()).orElse(List.of());
    }

    void book(Entry entry) {
        Deed deed = entry.deed();
        Optional<Id> who = Optional.of(deed.who());
        if (deed.doing() instanceof Moved moved) {
            if (moved.verb() == MoveVerb.BUILT) {
                build(deed, who, moved.things());
            } else {
                moved.things().forEach(held -> piles.put(who, Pile.things(catalogue, held.what(), held.count(),
                        Optional.of(entry.day()))));
            }
        } else if (deed.doing() instanceof Converted converted) {
            converted.things().forEach(held -> take(deed, who, held, "worked over"));
            piles.put(who, Pile.things(catalogue, converted.into().what(), converted.into().count(), Optional.empty()));
        } else if (deed.doing() instanceof GaveUp gave) {
            gave.things().forEach(held -> take(deed, who, held, "given up"));
        } else if (deed.doing() instanceof Passed passed) {
            pass(deed, passed);
        } else if (deed.doing() instanceof CountTaken taken) {
            taken.things().forEach(held -> piles.count(who, held.what(), held.count()));
        }
    }

    private void build(Deed deed, Optional<Id> who, List<Held> things) {
        Map<Id, Integer> wanted = new TreeMap<>();
        things.forEach(held -> wanted.merge(held.what(), held.count(), Integer::sum));
        Map<Id, Integer> there = new TreeMap<>();
        wanted.keySet().forEach(what -> there.put(what, piles.stacked(who, what)));
        // What lay in a box as a piece of its own is counted already; nothing is to be built for it.
        piles.build(who, wanted).forEach((what, missing) -> {
            if (there.get(what) < missing) {
                below(deed, what, wanted.get(what), wanted.get(what) - missing + there.get(what), "built");
            }
        });
    }

    private void pass(Deed deed, Passed passed) {
        Optional<Id> who = Optional.of(deed.who());
        String word = switch (passed.verb()) {
            case LENT -> "lent";
            case RETURNED -> "returned";
            case GAVE -> "given";
            case SOLD -> "sold";
        };
        for (Held held : passed.things()) {
            int count = Math.min(held.count(), piles.has(who, held.what()));
            piles.put(passed.to(), take(deed, who, held, word));
            if (passed.verb() == PassVerb.LENT && count > 0) {
                loans.add(new Loan(deed.id(), deed.who(), passed.to(), held.what(), count, deed.clauses().untilWeek()));
            } else if (passed.verb() == PassVerb.RETURNED) {
                comeBack(passed.to(), deed.who(), held.what(), count);
            }
        }
        for (Held held : exchanged(deed)) {
            piles.put(who, take(deed, passed.to(), held, "given in return"));
        }
    }

    private void comeBack(Optional<Id> owner, Id holder, Id what, int count) {
        int left = count;
        for (int i = 0; i < loans.size() && left > 0; i++) {
            Loan loan = loans.get(i);
            if (Optional.of(loan.owner()).equals(owner) && loan.holder().equals(Optional.of(holder))
                    && loan.what().equals(what)) {
                int back = Math.min(left, loan.count());
                left -= back;
                loans.set(i, new Loan(loan.deed(), loan.owner(), loan.holder(), what, loan.count() - back, loan.until()));
            }
        }
        loans.removeIf(loan -> loan.count() == 0);
    }

    private Supply take(Deed deed, Optional<Id> who, Held held, String word) {
        int there = piles.has(who, held.what());
        if (there < held.count()) {
            below(deed, held.what(), held.count(), there, word);
        }
        return piles.take(who, held.what(), held.count());
    }

    private void below(Deed deed, Id what, int count, int there, String word) {
        String title = catalogue.title(what);
        findings.add(new Finding(BELOW_ZERO, Severity.CAUTION, deed.id(), Optional.empty(), count + " of " + title
                + " were " + word + ", but " + (there == 0 ? "none is" : there == 1 ? "only 1 is" : "only " + there + " are")
                + " on the shelf; so many are booked.", List.of(Mend.advice("Write what is missing: 'found "
                        + (count - there) + ' ' + what.name() + "' in the week in which they came to light, or 'counted'"
                        + " and what a count gave"))));
    }
}
