package org.cantonment.rules.muster;

import org.cantonment.domain.force.Entry;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/** An entry of a list, looked up. Nodes stand in the order of the list, whatever stands in a formation behind it. */
public final class Node {

    final Entry entry;
    final Choice choice;
    final int index;
    final int parent;
    final boolean support;
    final int count;
    final long copies;
    int end;
    int strength;
    Step step;
    long points;
    int[] supports = {};

    Node(Entry entry, Choice choice, int index, int parent, boolean support, int count, long copies) {
        this.entry = entry;
        this.choice = choice;
        this.index = index;
        this.parent = parent;
        this.support = support;
        this.count = count;
        this.copies = copies;
    }

    /** The entry. */
    public Entry entry() {
        return entry;
    }

    /** What it is; null if the rules know no such unit or formation. */
    public Choice choice() {
        return choice;
    }

    /** The unit that it is, or null. */
    public UnitView unit() {
        return choice instanceof UnitView unit ? unit : null;
    }

    /** The formation that it is, or null. */
    public FormationView formation() {
        return choice instanceof FormationView formation ? formation : null;
    }

    /** Its number, from 0. */
    public int index() {
        return index;
    }

    /** The number of the formation it stands in; -1 at the top. */
    public int parent() {
        return parent;
    }

    /** The number of the first node that no longer stands in it. */
    public int end() {
        return end;
    }

    /** Whether it stands under the word support. */
    public boolean support() {
        return support;
    }

    /** How many the entry says. */
    public int count() {
        return count;
    }

    /** How many of it there are in the whole list, its formations' counts multiplied in. */
    public long copies() {
        return copies;
    }

    /** The strength taken, or the least one if none was written; 0 for a formation. */
    public int strength() {
        return strength;
    }

    /** The step of that strength, or null if it is not offered. */
    public Step step() {
        return step;
    }

    /** What all copies cost, without what stands in it. */
    public long points() {
        return points;
    }

    /** How many copies stand in each support; empty if none does. */
    public int[] supports() {
        return supports;
    }
}
