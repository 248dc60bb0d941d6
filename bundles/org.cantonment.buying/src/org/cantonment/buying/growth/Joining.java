package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Relation;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.TakingView;
import org.cantonment.rules.view.UnitView;

/**
 * Who joins whom in a list, where the rules ask for it. Whoever must join somebody joins one who stands nearest and has the
 * fewest others with him; who is joined gets a name of his own.
 */
final class Joining {

    private static final List<String> ORDINALS = List.of("First", "Second", "Third", "Fourth", "Fifth", "Sixth", "Seventh",
            "Eighth", "Ninth", "Tenth", "Eleventh", "Twelfth");

    /** An entry of the list, one for each copy; whatever stands in it comes behind it. */
    private static final class Row {
        private final Entry entry;
        private final Choice choice;
        private final int parent;
        private final int number;
        private int end;
        private Optional<String> alias = Optional.empty();
        private Row host;
        private int guests;

        Row(Entry entry, Choice choice, int parent, int number) {
            this.entry = entry;
            this.choice = choice;
            this.parent = parent;
            this.number = number;
        }
    }

    private final Ruling ruling;
    private final List<TakingView> lines;
    private final List<TakingView> matches;
    private final List<Row> rows = new ArrayList<>();
    private final Map<TakingView, Set<Row>> joined = new HashMap<>();

    private Joining(Ruling ruling, List<TakingView> lines) {
        this.ruling = ruling;
        this.lines = lines;
        this.matches = takings(ruling, Relation.MATCHES);
    }

    private static List<TakingView> takings(Ruling ruling, Relation relation) {
        List<TakingView> lines = new ArrayList<>();
        ruling.limits().forEach(limit -> {
            for (LimitLine line : limit.lines()) {
                if (line instanceof TakingView taking && taking.taking().relation() == relation) {
                    lines.add(taking);
                }
            }
        });
        return lines;
    }

    /** The same with everybody joined who must be, as far as there is somebody to join; formations stand one on a line. */
    static Body joined(Ruling ruling, Body body) {
        List<TakingView> lines = takings(ruling, Relation.JOINS);
        return lines.isEmpty() ? body : new Joining(ruling, lines).joined(body);
    }

    private Body joined(Body body) {
        lay(body.entries(), -1);
        int supports = rows.size();
        lay(body.supports(), -1);
        for (Row row : rows) {
            join(row);
        }
        name();
        return new Body(written(0, supports), written(supports, rows.size()));
    }

    private void lay(List<Entry> entries, int parent) {
        for (Entry entry : entries) {
            for (int copy = 0; copy < entry.count(); copy++) {
                Row row = new Row(entry, ruling.choice(entry.what()), parent, rows.size());
                rows.add(row);
                lay(entry.body().entries(), row.number);
                row.end = rows.size();
            }
        }
    }

    private void join(Row row) {
        List<Row> hosts = null;
        List<TakingView> asked = new ArrayList<>();
        for (TakingView line : lines) {
            for (List<Row> ground : grounds(line, row)) {
                List<Row> here = ground.stream().filter(one -> line.objects().takes(one.choice.index())
                        && !line.subjects().takes(one.choice.index())).toList();
                hosts = new ArrayList<>(hosts == null ? here : hosts);
                hosts.retainAll(here);
                asked.add(line);
            }
        }
        if (hosts != null) {
            hosts.stream().min(Comparator.comparing((Row host) -> unlike(row, host)).thenComparing(host -> beyond(host, asked))
                    .thenComparing(host -> host.parent != row.parent).thenComparing(host -> host.guests)
                    .thenComparing(host -> host.number)).ifPresent(host -> {
                        row.host = host;
                        host.guests++;
                        asked.forEach(line -> joined.computeIfAbsent(line, key -> new HashSet<>()).add(host));
                    });
        }
    }

    /** The stretches of the list in which a line asks something of a row. */
    private List<List<Row>> grounds(TakingView line, Row row) {
        List<List<Row>> grounds = new ArrayList<>();
        if (!line.subjects().takes(row.choice.index())) {
            return grounds;
        }
        Reckoning reckoning = line.taking().scope().reckoning();
        if (reckoning == Reckoning.EACH_FORMATION) {
            if (row.parent >= 0) {
                grounds.add(rows.stream().filter(one -> one.parent == row.parent).toList());
            }
        } else if (reckoning == Reckoning.EACH_OF) {
            for (int at = row.parent; at >= 0; at = rows.get(at).parent) {
                if (rows.get(at).choice.id().equals(line.taking().scope().formation().orElse(null))) {
                    grounds.add(rows.subList(at + 1, rows.get(at).end));
                }
            }
        } else {
            grounds.add(rows);
        }
        return grounds;
    }

    /** Whether a line asks them to be equally strong and they are not. */
    private boolean unlike(Row row, Row host) {
        return strength(row) != strength(host) && matches.stream().anyMatch(line ->
                line.taking().span().isEmpty() && line.subjects().takes(row.choice.index())
                        && line.objects().takes(host.choice.index()));
    }

    private static int strength(Row row) {
        return row.entry.strength().orElseGet(() -> row.choice instanceof UnitView unit ? unit.leastStrength() : 0);
    }

    /** For how many lines too few or too many would be joined if this one were. */
    private int beyond(Row host, List<TakingView> asked) {
        int beyond = 0;
        for (TakingView line : asked) {
            Set<Row> so = joined.getOrDefault(line, Set.of());
            Span span = line.taking().span().orElse(Span.atLeast(1));
            boolean wanted = so.contains(host) ? so.size() >= span.min() : !span.bounded() || so.size() < span.max();
            beyond += wanted ? 0 : 1;
        }
        return beyond;
    }

    private void name() {
        Set<String> had = new HashSet<>();
        ruling.choices().forEach(choice -> had.add(choice.id().name()));
        for (Row row : rows) {
            if (row.guests > 0) {
                String name = row.choice.id().name();
                int number = 0;
                String alias = ORDINALS.get(0) + "-" + name;
                while (!had.add(alias)) {
                    number++;
                    alias = number < ORDINALS.size() ? ORDINALS.get(number) + "-" + name : name + "-" + (number + 1);
                }
                row.alias = Optional.of(alias);
            }
        }
    }

    private List<Entry> written(int from, int to) {
        List<Entry> entries = new ArrayList<>();
        for (int at = from; at < to; at = rows.get(at).end) {
            Row row = rows.get(at);
            Entry entry = row.entry;
            Entry one = new Entry(entry.id(), entry.billet(), 1, entry.what(), entry.strength(), entry.options(), row.alias,
                    entry.label(), Optional.ofNullable(row.host).flatMap(host -> host.alias),
                    new Body(written(at + 1, row.end), List.of()), entry.notes());
            Entry last = entries.isEmpty() ? null : entries.get(entries.size() - 1);
            if (last != null && alike(last, one)) {
                entries.set(entries.size() - 1, counted(last, last.count() + 1, last.id()));
            } else {
                boolean again = entries.stream().anyMatch(other -> other.id().equals(one.id()));
                entries.add(again ? counted(one, 1, another(one.id(), entries.size())) : one);
            }
        }
        return entries;
    }

    private static Id another(Id id, int number) {
        return id.child("line-" + (number + 1));
    }

    private static boolean alike(Entry one, Entry other) {
        return one.body().entries().isEmpty() && other.body().entries().isEmpty() && one.alias().isEmpty()
                && other.alias().isEmpty() && one.joins().equals(other.joins()) && one.what().equals(other.what())
                && one.strength().equals(other.strength()) && one.options().equals(other.options());
    }

    private static Entry counted(Entry entry, int count, Id id) {
        return new Entry(id, entry.billet(), count, entry.what(), entry.strength(), entry.options(), entry.alias(),
                entry.label(), entry.joins(), entry.body(), entry.notes());
    }
}
