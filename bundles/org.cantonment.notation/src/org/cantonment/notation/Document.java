package org.cantonment.notation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.model.book.Book;
import org.cantonment.notation.form.DotCheck;
import org.cantonment.notation.form.NameCheck;
import org.cantonment.notation.reading.BookReader;
import org.cantonment.notation.reading.Reading;
import org.cantonment.notation.text.LineStarts;
import org.cantonment.notation.text.MendWriter;
import org.cantonment.notation.text.Regions;
import org.cantonment.notation.text.ResourceFindings;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextFinding;
import org.cantonment.notation.text.TextMend;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.util.ITextRegion;

/**
 * One book of a library: its text, its model, what it means, and where each thing of the meaning stands. Read when it
 * is first asked for its meaning or its findings; not safe for use by several threads at once.
 */
public final class Document {

    private final Path file;
    private final XtextResource resource;
    private String text;
    private LineStarts lines;
    private Reading reading;
    private Optional<Object> meaning = Optional.empty();
    private List<TextFinding> findings;

    Document(Path file, XtextResource resource, String text) {
        this.file = file;
        this.resource = resource;
        changed(text);
    }

    /** The text was parsed anew, or its names were linked anew. */
    void changed(String now) {
        text = now;
        lines = null;
        reading = null;
        meaning = Optional.empty();
        findings = null;
    }

    /** @return the file */
    public Path file() {
        return file;
    }

    /** @return the text as it was last put */
    public String text() {
        return text;
    }

    /** @return the typed model and its text; change it only by putting a new text into the library */
    public XtextResource resource() {
        return resource;
    }

    /** @return where the lines begin */
    public LineStarts lines() {
        if (lines == null) {
            lines = new LineStarts(text);
        }
        return lines;
    }

    /** @return the model; empty if the first line cannot be read */
    public Optional<Book> book() {
        IParseResult result = resource.getParseResult();
        return result != null && result.getRootASTElement() instanceof Book book ? Optional.of(book) : Optional.empty();
    }

    /**
     * @param type a kind of meaning: a range, a rule set, a shelf, a force list, a campaign, a week or a book of names
     * @return what the book means, if it is of that kind
     */
    public <T> Optional<T> meaning(Class<T> type) {
        read(CancelIndicator.NullImpl);
        return meaning.filter(type::isInstance).map(type::cast);
    }

    /** @return what is wrong with the form of the book, one for each line at most where the line cannot be read */
    public List<TextFinding> findings() {
        read(CancelIndicator.NullImpl);
        return findings;
    }

    /** @return what each id of the book stands for; ids of lines and entries included */
    public Map<Id, EObject> places() {
        read(CancelIndicator.NullImpl);
        return reading.places();
    }

    /**
     * Links and reads the book now.
     *
     * @param cancel asked now and then
     * @throws org.eclipse.xtext.service.OperationCanceledError if it says so; the book is then read when next asked
     */
    public void read(CancelIndicator cancel) {
        if (reading != null) {
            return;
        }
        EcoreUtil2.resolveLazyCrossReferences(resource, cancel);
        Optional<Book> book = book();
        Reading now = new Reading(book.map(b -> BookReader.idOf(b, file)).orElse("?"));
        Optional<Object> meant = book.flatMap(b -> BookReader.read(b, now));
        book.ifPresent(b -> NameCheck.check(b, now));
        List<TextFinding> all = new ArrayList<>(ResourceFindings.of(resource, text, lines()));
        Set<Integer> broken = ResourceFindings.brokenLines(resource, lines());
        for (Reading.Problem problem : now.problems()) {
            TextFinding finding = located(problem);
            boolean said = all.stream().anyMatch(other -> other.offset() == finding.offset()
                    && other.code().equals(finding.code()));
            if (!said && !broken.contains(lines().lineOf(finding.offset()))) {
                all.add(finding);
            }
        }
        for (TextFinding jump : DotCheck.of(text)) {
            all.removeIf(other -> lines().lineOf(other.offset()) == lines().lineOf(jump.offset()));
            all.add(jump);
        }
        all.sort(null);
        findings = List.copyOf(all);
        meaning = meant;
        reading = now;
    }

    private TextFinding located(Reading.Problem problem) {
        ITextRegion region = Regions.of(problem.at(), problem.feature(), problem.index(), text);
        int length = Math.max(region.getLength(), Math.min(1, text.length() - region.getOffset()));
        List<TextMend> mends = problem.instead().map(instead -> List.of(new TextMend("Write " + instead,
                List.of(new TextChange(region.getOffset(), region.getLength(), instead))))).orElse(List.of());
        return new TextFinding(region.getOffset(), length, problem.severity(), problem.code(), problem.message(),
                Optional.empty(), mends);
    }

    /**
     * @param finding a finding of an engine about something of this book
     * @return the same at its place in this text, with its mends as changes of this text
     */
    public TextFinding locate(Finding finding) {
        ITextRegion region = regionOf(finding.at());
        MendWriter writer = new MendWriter(text, lines(), places());
        return new TextFinding(region.getOffset(), Math.max(region.getLength(), Math.min(1, text.length())),
                finding.severity(), finding.code(), finding.message(), finding.rule(),
                finding.mends().stream().map(writer::write).toList());
    }

    /**
     * @param mend what an engine would change in this book
     * @return the same as changes of this text
     */
    public TextMend write(Mend mend) {
        return new MendWriter(text, lines(), places()).write(mend);
    }

    /**
     * @param id an id of this book
     * @return where it stands: its name, its unit, or its line; for an id that does not stand here, its card, and at
     *         last the book's first line
     */
    public ITextRegion regionOf(Id id) {
        EObject object = places().get(id);
        if (object == null) {
            object = places().get(id.card());
        }
        if (object == null) {
            object = book().orElse(null);
        }
        return object == null ? new org.eclipse.xtext.util.TextRegion(0, 0) : Regions.of(object, null, 0, text);
    }
}
