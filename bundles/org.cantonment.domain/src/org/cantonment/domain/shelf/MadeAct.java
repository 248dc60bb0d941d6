package org.cantonment.domain.shelf;

/** What became of the contents of a holding: built, lost, or left as it was. */
public enum MadeAct {
    BUILT, LOST, LEFT
}
