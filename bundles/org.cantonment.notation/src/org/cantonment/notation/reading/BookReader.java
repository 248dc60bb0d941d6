package org.cantonment.notation.reading;

import java.nio.file.Path;
import java.util.Optional;

import org.cantonment.model.book.Book;
import org.cantonment.model.campaign.Campaign;
import org.cantonment.model.campaign.NamesBook;
import org.cantonment.model.campaign.Player;
import org.cantonment.model.campaign.WeekBook;
import org.cantonment.model.force.ForceList;
import org.cantonment.model.range.Range;
import org.cantonment.model.ruleset.RuleSet;
import org.cantonment.model.shelf.Shelf;
import org.cantonment.notation.names.BookNames;

/** Reads any book with the reader of its kind. */
public final class BookReader {

    private BookReader() {
    }

    /**
     * @param book a book
     * @param file where it stands
     * @return the id by which it is known: its own name, or what its first line says instead of one
     */
    public static String idOf(Book book, Path file) {
        if (book instanceof ForceList list) {
            return ListReader.idOf(list);
        }
        if (book instanceof WeekBook week) {
            return (named(week.getCampaign()) ? week.getCampaign().getName() : "Campaign") + "/week-" + week.getNumber();
        }
        if (book instanceof NamesBook names) {
            return (named(names.getCampaign()) ? names.getCampaign().getName() : "Campaign") + "/names";
        }
        String name = BookNames.nameOf(book);
        if (!name.isEmpty()) {
            return name;
        }
        if (book instanceof Shelf shelf) {
            Optional<Player> owner = shelf.getOwners().stream().filter(BookReader::named).findFirst();
            return "shelf/" + owner.map(Player::getName).orElse(shelf.isClub() ? "the-club" : "nobody");
        }
        return String.valueOf(file.getFileName());
    }

    private static boolean named(org.cantonment.model.book.Named named) {
        return named != null && !named.eIsProxy() && named.getName() != null;
    }

    /**
     * @param book    a book
     * @param reading takes its places and problems
     * @return what it means; empty for a book whose first line cannot be read
     */
    public static Optional<Object> read(Book book, Reading reading) {
        if (book instanceof RuleSet rules) {
            return Optional.of(RulesReader.read(rules, reading));
        }
        if (book instanceof ForceList list) {
            return Optional.of(ListReader.read(list, reading));
        }
        if (book instanceof Range range) {
            return Optional.of(RangeReader.read(range, reading));
        }
        if (book instanceof Shelf shelf) {
            return Optional.of(ShelfReader.read(shelf, reading));
        }
        if (book instanceof Campaign campaign) {
            return Optional.of(CampaignReader.read(campaign, reading));
        }
        if (book instanceof WeekBook week) {
            return Optional.of(CampaignReader.readWeek(week, reading));
        }
        return book instanceof NamesBook names ? Optional.of(CampaignReader.readNames(names, reading))
                : Optional.empty();
    }
}
