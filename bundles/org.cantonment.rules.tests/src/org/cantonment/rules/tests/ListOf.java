package org.cantonment.rules.tests;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Taken;

/** Builds a list for a test; entries are numbered through the list as they are in a text. */
final class ListOf {

    private final String name;
    private final String book;
    private final List<Row> rows = new ArrayList<>();
    private final List<Row> supports = new ArrayList<>();
    private final List<ListOf> contingents = new ArrayList<>();
    private OptionalInt limit = OptionalInt.empty();
    private int number;

    ListOf(String name, String book) {
        this.name = name;
        this.book = book;
    }

    /** An entry that is being built. */
    static final class Row {

        private final String what;
        private final int count;
        private final List<Row> rows = new ArrayList<>();
        private final List<Taken> taken = new ArrayList<>();
        private OptionalInt strength = OptionalInt.empty();
        private Optional<String> billet = Optional.empty();
        private Optional<String> alias = Optional.empty();
        private Optional<String> joins = Optional.empty();

        private Row(int count, String what) {
            this.count = count;
            this.what = what;
        }

        Row of(int wanted) {
            strength = OptionalInt.of(wanted);
            return this;
        }

        Row with(int many, String option) {
            taken.add(new Taken(many, option));
            return this;
        }

        Row in(String pin) {
            billet = Optional.of(pin);
            return this;
        }

        Row as(String own) {
            alias = Optional.of(own);
            return this;
        }

        Row joins(String other) {
            joins = Optional.of(other);
            return this;
        }
    }

    static Row one(String what) {
        return new Row(1, what);
    }

    static Row some(int count, String what) {
        return new Row(count, what);
    }

    static Row formation(String what, Row... rows) {
        return formation(1, what, rows);
    }

    static Row formation(int count, String what, Row... rows) {
        Row row = new Row(count, what);
        row.rows.addAll(List.of(rows));
        return row;
    }

    ListOf add(Row... some) {
        rows.addAll(List.of(some));
        return this;
    }

    ListOf support(Row... some) {
        supports.addAll(List.of(some));
        return this;
    }

    ListOf contingent(ListOf ally) {
        contingents.add(ally);
        return this;
    }

    ListOf to(int points) {
        limit = OptionalInt.of(points);
        return this;
    }

    private Entry entry(Row row) {
        Id id = Id.of(name).line(++number);
        return new Entry(id, row.billet, row.count, Id.of(book, row.what), row.strength, row.taken, row.alias, "",
                row.joins, new Body(entries(row.rows), List.of()), List.of());
    }

    private List<Entry> entries(List<Row> some) {
        List<Entry> entries = new ArrayList<>();
        some.forEach(row -> entries.add(entry(row)));
        return entries;
    }

    private Body body() {
        return new Body(entries(rows), entries(supports));
    }

    ForceList build() {
        Body body = body();
        List<Contingent> allies = new ArrayList<>();
        for (ListOf ally : contingents) {
            allies.add(new Contingent(Id.of(ally.name), "", List.of(Id.of(ally.book)), ally.limit, ally.body(),
                    List.of()));
        }
        return new ForceList(Id.of(name), Optional.empty(), OptionalInt.empty(), List.of(), Optional.empty(), limit,
                body, allies, List.of(), List.of(), List.of());
    }
}
