package org.cantonment.domain.finding;

/** A change of a list that can be made without further questions. */
public sealed interface Action permits
        RemoveEntry, SetCount, SetStrength, SetOption, ReplaceUnit, AddUnit, MoveEntry, Unpin, SetText, Advice {
}
