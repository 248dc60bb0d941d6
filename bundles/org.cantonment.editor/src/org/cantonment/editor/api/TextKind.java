package org.cantonment.editor.api;

import java.util.Locale;

/** The kinds of text that have a colour of their own. */
public enum TextKind {
    /** A word of the notation. */
    KEYWORD,
    /** A name that a person gave to something. */
    NAME,
    /** The name at the place where it is given. */
    DEFINITION,
    /** A number, a date, a sum. */
    NUMBER,
    /** Quoted text. */
    QUOTED,
    /** A remark that means nothing to the machine. */
    REMARK,
    /** A sign that structures the line. */
    SIGN,
    /** Everything else. */
    PLAIN;

    /**
     * The id of the theme colour of this kind.
     *
     * @return an id that the editor's plugin.xml defines
     */
    public String colourId() {
        return "org.cantonment.editor.colour." + name().toLowerCase(Locale.ROOT);
    }
}
