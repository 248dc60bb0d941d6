package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.book.Book;
import org.cantonment.model.book.Line;
import org.cantonment.model.book.Named;
import org.cantonment.model.book.Note;
import org.cantonment.model.campaign.Round;
import org.cantonment.model.range.Box;
import org.cantonment.model.range.Printing;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.names.BookNames;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** One book being read: where its ids stand in the text, and what did not make sense. */
public final class Reading {

    /**
     * Something that did not make sense.
     *
     * @param at      the object it is about
     * @param feature the part of it that is wrong; null for the whole
     * @param index   which of several values of the feature; 0 for a single one
     */
    public record Problem(EObject at, EStructuralFeature feature, int index, Severity severity, String code,
            String message, Optional<String> instead) {
    }

    private final String book;
    private final Map<Id, EObject> places = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /** @param book the id under which the book's things are known */
    public Reading(String book) {
        this.book = book;
    }

    /** @return the id of the book itself */
    public Id bookId() {
        return Id.of(book);
    }

    /** @return what every id of the book stands for in its text */
    public Map<Id, EObject> places() {
        return places;
    }

    /** @return what did not make sense, in the order in which it was met */
    public List<Problem> problems() {
        return problems;
    }

    /** Notes where an id stands; the first place of an id is kept. */
    public Id at(Id id, EObject object) {
        places.putIfAbsent(id, object);
        return id;
    }

    /** @return the id of a named thing of this book, its place noted; a thing without a name is known by its type */
    public Id id(Named named) {
        return at(idIn(book, named), named);
    }

    /** @return the id of something that others name, in whatever book; empty if the name meant nothing */
    public static Optional<Id> ref(EObject target) {
        if (target == null || target.eIsProxy() || !(target instanceof Named named) || named.getName() == null
                || named.getName().isEmpty()) {
            return Optional.empty();
        }
        String owner = BookNames.nameOf(EcoreUtil.getRootContainer(target));
        if (target.eContainer() instanceof Round round) {
            return Optional.of(inRound(owner, round, named));
        }
        return Optional.of(target instanceof Book ? Id.of(named.getName()) : idIn(owner, named));
    }

    /** Two boxes may each have a Second printing, so a printing is known by its box as well. */
    private static Id idIn(String book, Named named) {
        String name = named.getName() == null ? "?" : named.getName();
        return named instanceof Printing && named.eContainer() instanceof Box box
                ? Id.of(book, text(box.getName())).child(name) : Id.of(book, name);
    }

    /** @return the id of an evening of a round: rounds may call their evenings alike */
    public Id inRound(Round round, Named named) {
        return at(inRound(book, round, named), named);
    }

    private static Id inRound(String owner, Round round, Named named) {
        return Id.of(owner, "round-" + number(round.getNumber(), 0)).child(named.getName() == null ? "?" : named.getName());
    }

    /** @return the ids of those that mean something */
    public static List<Id> refs(List<? extends EObject> targets) {
        List<Id> ids = new ArrayList<>(targets.size());
        for (EObject target : targets) {
            ref(target).ifPresent(ids::add);
        }
        return List.copyOf(ids);
    }

    /** @return the values without those that a half-typed line leaves out */
    public static <T> List<T> written(List<T> values) {
        return values.stream().filter(Objects::nonNull).toList();
    }

    /** @return a text that is never null */
    public static String text(String value) {
        return value == null ? "" : value;
    }

    /** @return the label of a named thing, empty if none was written */
    public static String label(Named named) {
        return text(named.getLabel());
    }

    /** @return the number, or the default where none was written */
    public static int number(Integer value, int otherwise) {
        return value == null ? otherwise : value;
    }

    /** @return the number, if one was written */
    public static OptionalInt optional(Integer value) {
        return value == null ? OptionalInt.empty() : OptionalInt.of(value);
    }

    /** @return the notes among some lines */
    public static List<String> notes(List<? extends Line> lines) {
        List<String> notes = new ArrayList<>(0);
        for (Line line : lines) {
            if (line instanceof Note note) {
                notes.add(text(note.getText()));
            }
        }
        return List.copyOf(notes);
    }

    /**
     * @param value   a number, null if none was written
     * @param feature where it stands
     * @return the number if it is at least 1; else a finding is made and 1 is taken
     */
    public int atLeastOne(EObject at, EStructuralFeature feature, Integer value) {
        if (value == null) {
            return 1;
        }
        if (value < 1) {
            problem(at, feature, Severity.BREACH, Codes.NUMBER_RANGE, "A number here is at least 1.");
            return 1;
        }
        return value;
    }

    /** @return the percentage if it is at most 100; else a finding is made and 100 is taken */
    public int percent(EObject at, EStructuralFeature feature, Integer value) {
        int percent = number(value, 0);
        if (percent > 100) {
            problem(at, feature, Severity.BREACH, Codes.NUMBER_RANGE, "A share is at most 100 percent.");
            return 100;
        }
        return percent;
    }

    /** Notes that a line stands under a heading where it means nothing. */
    public void misplaced(Line line, String heading) {
        if (!(line instanceof Note) && line.eClass() != org.cantonment.model.book.BookPackage.Literals.LINE) {
            problem(line, null, Severity.BREACH, Codes.PLACE, "This line means nothing under " + heading
                    + "; it is left out.");
        }
    }

    /** Notes something that makes no sense. */
    public void problem(EObject at, EStructuralFeature feature, Severity severity, String code, String message) {
        problems.add(new Problem(at, feature, 0, severity, code, message, Optional.empty()));
    }

    /** Notes something that makes no sense, and what might stand there instead. */
    public void problem(EObject at, EStructuralFeature feature, Severity severity, String code, String message,
            String instead) {
        problems.add(new Problem(at, feature, 0, severity, code, message, Optional.of(instead)));
    }
}
