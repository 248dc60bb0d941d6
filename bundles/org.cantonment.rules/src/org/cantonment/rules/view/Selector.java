package org.cantonment.rules.view;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.StringJoiner;

import org.cantonment.domain.common.Id;

/** Some units, kinds, formations and supports, looked up. */
public final class Selector {

    private final List<Id> ids;
    private final BitSet choices;
    private final BitSet supports;
    private final boolean formations;
    private final String words;

    /**
     * @param choices numbers of the choices meant
     * @param supports numbers of the supports meant
     * @param formations whether one of the choices is a formation
     */
    public Selector(List<Id> ids, BitSet choices, BitSet supports, boolean formations, String words) {
        this.ids = List.copyOf(ids);
        this.choices = (BitSet) choices.clone();
        this.supports = (BitSet) supports.clone();
        this.formations = formations;
        this.words = words;
    }

    /** All that any of these means. */
    public static Selector union(List<Selector> some) {
        List<Id> ids = new ArrayList<>();
        BitSet choices = new BitSet();
        BitSet supports = new BitSet();
        StringJoiner words = new StringJoiner(" or ");
        boolean formations = false;
        for (Selector selector : some) {
            ids.addAll(selector.ids);
            choices.or(selector.choices);
            supports.or(selector.supports);
            formations |= selector.formations;
            words.add(selector.words);
        }
        return new Selector(ids, choices, supports, formations, words.toString());
    }

    /** Everybody among so many choices. */
    public static Selector everything(int choices) {
        BitSet all = new BitSet();
        all.set(0, choices);
        return new Selector(List.of(), all, new BitSet(), true, "everything");
    }

    /** What was written. */
    public List<Id> ids() {
        return ids;
    }

    /** Whether nothing was written. */
    public boolean empty() {
        return ids.isEmpty();
    }

    /** Whether the choice of this number is meant. */
    public boolean takes(int choice) {
        return choices.get(choice);
    }

    /** The next choice meant, from a number on; -1 if there is none. */
    public int nextChoice(int from) {
        return choices.nextSetBit(from);
    }

    /** Whether what stands in the support of this number is meant; a negative number is no support. */
    public boolean takesSupport(int support) {
        return support >= 0 && supports.get(support);
    }

    /** Who is meant here and not by the other, supports left aside. */
    public Selector without(Selector other) {
        BitSet left = (BitSet) choices.clone();
        left.andNot(other.choices);
        return new Selector(ids, left, supports, formations, words);
    }

    /** Whether any support is meant. */
    public boolean hasSupports() {
        return !supports.isEmpty();
    }

    /** Whether any formation is meant. */
    public boolean hasFormations() {
        return formations;
    }

    /** The names, for people. */
    public String words() {
        return words;
    }
}
