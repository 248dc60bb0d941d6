package org.cantonment.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

import org.cantonment.desk.files.FileTrouble;
import org.cantonment.desk.files.FolderScan;
import org.cantonment.desk.files.TextReading;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.cantonment.notation.Notation;
import org.cantonment.rules.guest.Guests;

/**
 * A folder of books, opened: read, judged, and kept current. Changes may come from any thread and are worked through one
 * after another; {@link #snapshot()} never waits for them.
 *
 * <p>A change that is cancelled is not lost: the text is taken in, and whatever is left to do is done with the next one.
 */
public final class CampaignDesk {
    /** A file or folder could not be read. */
    public static final String UNREAD = "file.unread";

    private final DeskScope scope;
    private final Library library = Notation.get().newLibrary();
    private final SortedMap<Path, Sheet> sheets = new TreeMap<>();
    private final Placed placed;
    private volatile DeskSnapshot snapshot;

    private CampaignDesk(DeskScope scope, Guests guests) {
        this.scope = scope;
        this.placed = new Placed(library, sheets, guests);
        this.snapshot = DeskSnapshot.EMPTY;
    }

    /**
     * Opens a folder.
     *
     * @param folder   the folder, absolute
     * @param cancel   asked between two files and two lists
     * @param progress told of files read and lists judged
     * @throws Cancelled if the token says so
     */
    public static CampaignDesk open(Path folder, CancelToken cancel, Progress progress) {
        return open(DeskScope.all(folder), cancel, progress);
    }

    /**
     * Opens a folder, or a file alone, for some questions only.
     *
     * @throws Cancelled if the token says so
     */
    public static CampaignDesk open(DeskScope scope, CancelToken cancel, Progress progress) {
        return open(scope, new Guests(), cancel, progress);
    }

    /**
     * Opens a folder, or a file alone, with checks of others at hand. One that comes or goes later counts from the next
     * {@link #judge} on.
     *
     * @throws Cancelled if the token says so
     */
    public static CampaignDesk open(DeskScope scope, Guests guests, CancelToken cancel, Progress progress) {
        CampaignDesk desk = new CampaignDesk(scope, guests);
        desk.reload(cancel, progress);
        return desk;
    }

    /**
     * Opens a folder without judging it: every text is read for its form and its names, so that editors can begin at
     * once. {@link #judge} does the rest.
     *
     * @param folder   the folder, absolute
     * @param guests   the checks of others at hand, now and later
     * @param cancel   asked between two files
     * @param progress told of files read
     * @throws Cancelled if the token says so
     */
    public static CampaignDesk openUnjudged(Path folder, Guests guests, CancelToken cancel, Progress progress) {
        CampaignDesk desk = new CampaignDesk(DeskScope.all(folder), guests);
        desk.readAll(cancel, progress);
        desk.library.linkAnew();
        return desk;
    }

    /** What the desk looks at. */
    public DeskScope scope() {
        return scope;
    }

    /** What is known now. */
    public DeskSnapshot snapshot() {
        return snapshot;
    }

    /** The text that a file has on this desk; empty if it is not on it or could not be read. */
    public synchronized Optional<String> text(Path file) {
        return Optional.ofNullable(sheets.get(file)).map(Sheet::text);
    }

    /**
     * Reads the folder again: files that came, went or were changed by others. Files that an editor holds open keep the
     * editor's text.
     *
     * @throws Cancelled if the token says so
     */
    public synchronized DeskSnapshot reload(CancelToken cancel, Progress progress) {
        readAll(cancel, progress);
        return settle(cancel, progress);
    }

    private synchronized void readAll(CancelToken cancel, Progress progress) {
        FolderScan scan = Files.isDirectory(scope.place()) ? FolderScan.of(scope.place())
                : new FolderScan(List.of(scope.place()), List.of());
        Set<Path> found = new LinkedHashSet<>(Needed.of(scope, scan.books()));
        int done = 0;
        for (Path file : List.copyOf(found)) {
            cancel.check();
            progress.at(done++, found.size(), "Reading files:");
            readFromDisk(file);
        }
        for (FileTrouble trouble : scan.troubles()) {
            found.add(trouble.path());
            sheet(trouble.path()).failed(trouble.why());
        }
        for (Path file : new ArrayList<>(sheets.keySet())) {
            if (!found.contains(file) && !sheets.get(file).open()) {
                drop(file);
            }
        }
    }

    /**
     * Takes in what an editor holds now, without judging anything yet. The file need not exist.
     *
     * @param file the file, absolute
     * @param text its whole text
     * @return the book, its form and names up to date; whoever looks into it keeps to one thread
     */
    public synchronized Taken take(Path file, String text) {
        typed(file, text);
        return new Taken(library.document(file).orElseThrow(), linkAnew());
    }

    /**
     * Takes a file from the disk again without judging anything yet, like {@link #release}.
     *
     * @param file the file, absolute
     * @return the other books whose links were renewed by it
     */
    public synchronized List<Path> letGo(Path file) {
        if (Files.exists(file)) {
            sheet(file).letGo();
            readFromDisk(file);
        } else {
            drop(file);
        }
        return linkAnew();
    }

    /**
     * Judges what has changed since this was done last.
     *
     * @param cancel asked often
     * @throws Cancelled if the token says so; what is left is done the next time
     */
    public synchronized DeskSnapshot judge(CancelToken cancel) {
        return settle(cancel, Progress.SILENT);
    }

    /** The book of a file; whoever looks into it keeps to one thread. */
    public synchronized Optional<Document> document(Path file) {
        return library.document(file);
    }

    /**
     * A book that was taken in.
     *
     * @param document the book
     * @param renewed  the other books whose links were renewed because a name came, went or changed
     */
    public record Taken(Document document, List<Path> renewed) {
    }

    private List<Path> linkAnew() {
        return library.linkAnew().stream().map(Document::file).toList();
    }

    private void typed(Path file, String text) {
        Sheet sheet = sheet(file);
        if (!text.equals(sheet.text()) || library.document(file).isEmpty()) {
            library.put(file, text);
        }
        sheet.typed(text);
    }

    /**
     * Takes in what an editor holds now. The file need not exist.
     *
     * @param file   the file, absolute
     * @param text   its whole text
     * @param cancel asked often
     * @throws Cancelled if the token says so; the text is taken in all the same
     */
    public synchronized DeskSnapshot update(Path file, String text, CancelToken cancel) {
        typed(file, text);
        return settle(cancel, Progress.SILENT);
    }

    /**
     * Takes a file from the disk again: an editor has let go of it, or somebody else has changed it. A file that is gone
     * leaves the desk.
     *
     * @throws Cancelled if the token says so; the file is taken in all the same
     */
    public synchronized DeskSnapshot release(Path file, CancelToken cancel) {
        letGo(file);
        return settle(cancel, Progress.SILENT);
    }

    /**
     * Takes a file off the desk.
     *
     * @throws Cancelled if the token says so; the file is gone all the same
     */
    public synchronized DeskSnapshot remove(Path file, CancelToken cancel) {
        drop(file);
        return settle(cancel, Progress.SILENT);
    }

    /** How many lists have been judged since the desk was opened, each time counted: a measure of work saved. */
    public synchronized int judgements() {
        return placed.judgements();
    }

    /**
     * Looks at the books themselves while nobody changes them: for completion, hover and whatever else reads a book's
     * model. The library must not be changed, and nothing of it may be kept beyond the call.
     *
     * @param question asked once, in the calling thread; may wait for a change that is under way
     */
    public synchronized <T> T ask(Function<Library, T> question) {
        return question.apply(library);
    }

    private Sheet sheet(Path file) {
        return sheets.computeIfAbsent(file, Sheet::new);
    }

    private void readFromDisk(Path file) {
        Sheet sheet = sheet(file);
        if (sheet.open()) {
            return;
        }
        try {
            if (sheet.read(TextReading.of(file))) {
                library.put(file, sheet.text());
            }
        } catch (IOException e) {
            sheet.failed(e.getMessage());
            library.remove(file);
        }
    }

    private void drop(Path file) {
        if (sheets.remove(file) != null) {
            library.remove(file);
        }
    }

    private DeskSnapshot settle(CancelToken cancel, Progress progress) {
        library.linkAnew();
        snapshot = placed.settle(scope, snapshot.number() + 1, cancel, progress);
        return snapshot;
    }
}
