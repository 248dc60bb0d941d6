package org.cantonment.stock.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.CountTaken;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.Catalogue;

/**
 * From shelves as they were written down, and the deeds of the weeks since, to what lies where: the physical book of a
 * season. Whatever leaves one shelf arrives on another or is given up; losses in games stand on the roll and move nothing.
 *
 * <p>A deed happens on the day that it names, else on the first day of its week. Of one day, whatever can be done is done
 * before what would take a shelf below zero, so the order of the lines has no meaning; a count is taken when the day is
 * over. A deed on or before the day on which the doer wrote down a shelf of his is on it already and is not
 * booked again. The state of paint is not kept here.
 */
public final class Ledger {

    private static final Comparator<Entry> TRIED = Comparator.comparingInt((Entry entry) ->
            Bookings.phase(entry.deed().doing())).thenComparing(entry -> entry.deed().id());

    private final Catalogue catalogue;
    private final List<Shelf> shelves;
    private final List<Week> weeks;
    private final Calendar calendar;

    private Ledger(Catalogue catalogue, Collection<Shelf> shelves, Optional<Campaign> campaign, Collection<Week> weeks) {
        this.catalogue = catalogue;
        this.shelves = List.copyOf(shelves);
        this.weeks = new ArrayList<>(weeks);
        this.calendar = new Calendar(campaign);
        campaign.ifPresent(one -> this.weeks.addAll(one.weeks()));
    }

    /**
     * A ledger.
     *
     * @param campaign the season; without one nothing is known of days
     * @param weeks the weeks that have books of their own; those in the campaign's book are added
     */
    public static Ledger of(Catalogue catalogue, Collection<Shelf> shelves, Optional<Campaign> campaign,
            Collection<Week> weeks) {
        return new Ledger(catalogue, shelves, campaign, weeks);
    }

    /** What lies where. */
    public Inventory at(AsOf asOf) {
        Known known = new Known(calendar, weeks, asOf);
        Piles piles = new Piles(catalogue, shelves);
        Bookings bookings = new Bookings(catalogue, piles);
        Map<LocalDate, List<Entry>> days = new TreeMap<>();
        for (Entry entry : known.entries()) {
            if (Bookings.phase(entry.deed().doing()) >= 0 && within(entry, asOf) && !written(entry)) {
                days.computeIfAbsent(entry.day(), day -> new ArrayList<>()).add(entry);
            }
        }
        days.values().forEach(entries -> book(bookings, entries));
        List<Finding> findings = new ArrayList<>(piles.claims());
        findings.addAll(known.findings());
        findings.addAll(bookings.findings());
        return new Inventory(piles.supplies(), piles.owners(), bookings.loans(), findings);
    }

    private boolean within(Entry entry, AsOf asOf) {
        return !calendar.dated() || asOf.day().isEmpty() || !entry.day().isAfter(asOf.day().get());
    }

    /** Whether the doer's shelf was written down when it had happened already. */
    private boolean written(Entry entry) {
        Optional<LocalDate> latest = shelves.stream().filter(shelf -> shelf.owners().contains(entry.deed().who()))
                .map(Shelf::on).flatMap(Optional::stream).max(Comparator.naturalOrder());
        return calendar.dated() && latest.isPresent() && !entry.day().isAfter(latest.get());
    }

    private static void book(Bookings bookings, List<Entry> day) {
        List<Entry> waiting = new ArrayList<>(day);
        waiting.sort(TRIED);
        while (!waiting.isEmpty()) {
            Entry next = waiting.stream().filter(entry -> !(entry.deed().doing() instanceof CountTaken)
                    && bookings.ready(entry.deed())).findFirst().orElse(waiting.get(0));
            waiting.remove(next);
            bookings.book(next);
        }
    }
}
