package org.cantonment.stock.likeness;

/** How true a piece is to what it stands for, the truest first. */
public enum Truth {
    /** It is named by the need, or lies in a family that is. */
    EXACT,
    /** It lies in the family of a type that is named, or in a family within that. */
    KINDRED,
    /** A line of likeness lets it stand there. */
    STAND_IN,
    /** It would be worked over from spare pieces. */
    CONVERSION
}
