package org.cantonment.rules.view;

import java.util.List;
import java.util.Set;

import org.cantonment.domain.common.Id;

/** What an entry of a list may be: a unit or a formation, as it stands at this time. */
public sealed interface Choice permits UnitView, FormationView {

    /** Its id. */
    Id id();

    /** What people call it at this time. */
    String title();

    /** Its number among all choices of the ruling, from 0, units first. */
    int index();

    /** Its kinds and all that those lie in. */
    Set<Id> kinds();

    /** The sides it belongs to; empty means all. */
    Set<Id> sides();

    /** What it costs more or less for what else is in the list. */
    List<SurchargeView> surcharges();

    /** Whether it may be taken at this time. */
    Permission permission();

    /** The points of one at the least strength, without options. */
    long leastPoints();
}
