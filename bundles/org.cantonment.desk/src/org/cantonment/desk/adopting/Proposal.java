package org.cantonment.desk.adopting;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.notation.Document;
import org.cantonment.notation.Notation;
import org.cantonment.notation.text.TextChange;

/**
 * A book of rules that somebody thinks of adopting in a folder: a new text of a book that is there, or a layer that the
 * campaigns there do not play yet. Nothing is written.
 *
 * @param title    what the book is called
 * @param target   where it stands in the folder, or would stand
 * @param changed  whether the folder has a book of this name with another text
 * @param played   the campaigns that would have to say that they play it, with what to write there
 * @param adoption what would come of it
 */
public record Proposal(String title, Path target, boolean changed, List<Played> played, Adoption adoption) {

    /**
     * A campaign that would begin to play the book.
     *
     * @param title  what the campaign is called
     * @param file   its file
     * @param change what to write in it
     */
    public record Played(String title, Path file, TextChange change) {
    }

    /** Why a book cannot be proposed; the message is a whole sentence for a person. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        Refused(String message) {
            super(message);
        }
    }

    public Proposal {
        played = List.copyOf(played);
    }

    /**
     * Adopts a book on a desk that is the caller's own, and tells what came of it. The desk holds the proposed texts
     * afterwards; nothing goes to the disk.
     *
     * @param desk   a folder, opened and judged as it stands
     * @param file   where the proposed book comes from; need not lie in the folder
     * @param text   its text
     * @param cancel asked often
     * @throws Refused   if the text is no book of rules, or there is nothing to adopt
     * @throws Cancelled if the token says so
     */
    public static Proposal of(CampaignDesk desk, Path file, String text, CancelToken cancel) throws Refused {
        DeskSnapshot before = desk.snapshot();
        RuleSet alone = alone(file, text);
        Path folder = desk.scope().place();
        Optional<Path> known = before.meanings().rules(alone.id()).flatMap(before::file);
        Path target = known.orElseGet(() -> file.startsWith(folder) ? file : free(desk, folder, file));
        boolean changed = known.isPresent() && !desk.text(target).orElse("").equals(text);
        DeskSnapshot after = desk.update(target, text, cancel);
        List<Played> played = new ArrayList<>();
        RuleSet book = after.meanings().rules(alone.id()).orElse(alone);
        for (Campaign campaign : after.meanings().campaigns()) {
            if (wants(campaign, book, after.meanings())) {
                played.add(play(desk, campaign, after, book.id()));
            }
        }
        if (!changed && played.isEmpty()) {
            throw new Refused(nothing(book, known.isPresent(), after.meanings()));
        }
        for (Played one : played) {
            String now = desk.text(one.file()).orElseThrow();
            after = desk.update(one.file(), TextChange.apply(now, List.of(one.change())), cancel);
        }
        return new Proposal(book.title(), target, changed, played, Adoption.between(before, after, cancel));
    }

    private static Path free(CampaignDesk desk, Path folder, Path file) {
        String name = file.getFileName().toString();
        Path path = folder.resolve(name);
        for (int n = 2; desk.text(path).isPresent(); n++) {
            path = folder.resolve(n + "-" + name);
        }
        return path;
    }

    private static RuleSet alone(Path file, String text) throws Refused {
        Document document = Notation.get().newLibrary().put(file, text);
        return document.meaning(RuleSet.class).orElseThrow(() -> new Refused("'" + file.getFileName()
                + "' cannot be read as a book of rules: its first line does not begin with 'rules' and a name."));
    }

    // A layer is for those who play what it stands over, and any book for those who play nothing yet.
    private static boolean wants(Campaign campaign, RuleSet book, Meanings meanings) {
        List<Id> plays = meanings.closure(campaign.plays()).stream().map(RuleSet::id).toList();
        return plays.isEmpty() || !plays.contains(book.id()) && book.over().stream().anyMatch(plays::contains);
    }

    private static String nothing(RuleSet book, boolean known, Meanings meanings) {
        boolean anybody = meanings.campaigns().stream()
                .anyMatch(campaign -> meanings.closure(campaign.plays()).contains(book));
        if (known && anybody) {
            return book.title() + " stands in the folder with this very text and is played already, so there is nothing"
                    + " to adopt. To look at a changed version, look before it is saved, or name a file outside the folder.";
        }
        return book.title() + " changes nothing here: no campaign in the folder plays "
                + (book.over().isEmpty() ? "it." : "a book that it stands over.");
    }

    private static Played play(CampaignDesk desk, Campaign campaign, DeskSnapshot snapshot, Id book) {
        Path file = snapshot.file(campaign).orElseThrow();
        TextChange change = desk.ask(library -> PlaysLine.with(library.document(file).orElseThrow(), book.name()));
        return new Played(campaign.title(), file, change);
    }
}
