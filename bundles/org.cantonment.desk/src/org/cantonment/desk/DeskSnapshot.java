package org.cantonment.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;

/** What a desk held at one moment. Never changes; may be read from any thread. */
public final class DeskSnapshot {
    /** Of a desk that has not read anything yet. */
    static final DeskSnapshot EMPTY = new DeskSnapshot(0, new TreeMap<>(), Map.of(),
            new Meanings(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()), Map.of());

    private final long number;
    private final SortedMap<Path, List<LocatedFinding>> findings;
    private final Map<Path, Judged> judged;
    private final Meanings meanings;
    private final Map<Object, Path> books;

    DeskSnapshot(long number, SortedMap<Path, List<LocatedFinding>> findings, Map<Path, Judged> judged,
            Meanings meanings, Map<Object, Path> books) {
        this.number = number;
        this.findings = findings;
        this.judged = judged;
        this.meanings = meanings;
        this.books = books;
    }

    /** Grows with every change of the desk, so that of two snapshots the newer one can be told. */
    public long number() {
        return number;
    }

    /** The files of the desk, by path; also those that could not be read. */
    public List<Path> files() {
        return List.copyOf(findings.keySet());
    }

    /** All findings, by file, line and column. */
    public List<LocatedFinding> findings() {
        List<LocatedFinding> all = new ArrayList<>();
        findings.values().forEach(all::addAll);
        return all;
    }

    /** The findings of one file, by line and column. */
    public List<LocatedFinding> findings(Path file) {
        return findings.getOrDefault(file, List.of());
    }

    /** What was said of the list in a file; empty if it is no list, or could not be read as one, or nobody asked. */
    public Optional<Judged> judged(Path file) {
        return Optional.ofNullable(judged.get(file));
    }

    /** What was said of a list of these meanings; empty if nobody asked. */
    public Optional<Judged> judged(ForceList list) {
        return file(list).flatMap(this::judged);
    }

    /** The file of a book of these meanings, of whatever kind, found by identity. */
    public Optional<Path> file(Object book) {
        return Optional.ofNullable(books.get(book));
    }

    /** What makes a list not legal, breaches of form included, in the order of its lines; empty if it is legal. */
    public List<String> breachesOf(ForceList list) {
        return file(list).map(this::findings).orElse(List.of()).stream()
                .filter(finding -> finding.severity() == Severity.BREACH).map(LocatedFinding::message).toList();
    }

    /** What all books mean. */
    public Meanings meanings() {
        return meanings;
    }
}
