package org.cantonment.notation.form;

/** The stable codes of findings that the notation itself makes. docs/findings.md explains each. */
public final class Codes {

    /** No line begins with this word. */
    public static final String LINE = "form.line";
    /** Another word belongs here. */
    public static final String WORD = "form.word";
    /** The line ends before it has said its fact. */
    public static final String SHORT = "form.short";
    /** A sign that means nothing here. */
    public static final String SIGN = "form.sign";
    /** A text without its closing quote. */
    public static final String QUOTE = "form.quote";
    /** A line beyond the length that is read. */
    public static final String LONG = "form.long-line";
    /** More dots than the line above allows. */
    public static final String DOTS = "form.dots";
    /** A file with nothing in it. */
    public static final String EMPTY = "form.empty";
    /** Bytes that are no text. */
    public static final String BYTES = "form.bytes";
    /** The line belongs under another heading. */
    public static final String PLACE = "line.place";
    /** The same thing is said twice, with no word which holds. */
    public static final String TWICE = "said.twice";
    /** Nobody has this name. */
    public static final String UNKNOWN = "name.unknown";
    /** Two books have this name. */
    public static final String AMBIGUOUS = "name.two-books";
    /** Two things in one book have this name. */
    public static final String DUPLICATE = "name.twice";
    /** A name in small letters. */
    public static final String CAPITAL = "name.capital";
    /** A name that mixes scripts. */
    public static final String SCRIPTS = "name.scripts";
    /** A thing that contains or follows itself. */
    public static final String CIRCLE = "name.circle";
    /** A number out of its bounds. */
    public static final String NUMBER_RANGE = "number.range";
    /** A date that is not written like 2031-04-15. */
    public static final String DATE_FORM = "date.form";
    /** A day that no calendar has. */
    public static final String DATE_NONE = "date.none";
    /** A time of day that no clock shows. */
    public static final String TIME = "time.none";
    /** A price without a currency, or with one that is none. */
    public static final String CURRENCY = "money.currency";
    /** An amount finer than its currency. */
    public static final String AMOUNT = "money.amount";
    /** A yes or no where a number belongs, or the other way round. */
    public static final String EXPRESSION_TYPE = "expression.type";
    /** A part of an expression that means nothing where it stands. */
    public static final String EXPRESSION_PLACE = "expression.place";
    /** Words of one rank beside each other that may be taken in two ways. */
    public static final String EXPRESSION_OPEN = "expression.open";
    /** A division by nothing that can be seen. */
    public static final String EXPRESSION_ZERO = "expression.zero";
    /** An expression that leans on more others than can be followed. */
    public static final String EXPRESSION_DEEP = "expression.deep";
    /** A list that cannot be judged, because its rules, era or limit are not known. */
    public static final String CONTEXT = "list.context";
    /** A part of which nothing is built. */
    public static final String BUILDS_NOTHING = "part.builds-nothing";
    /** A box in which nothing lies. */
    public static final String BOX_EMPTY = "box.empty";
    /** More painted, primed or converted than there are. */
    public static final String SHARE = "shelf.share";
    /** A score that says another result than its verb. */
    public static final String SCORE = "game.score";
    /** A player who plays himself. */
    public static final String SELF = "game.self";
    /** The same sentence twice in one week. */
    public static final String DEED_TWICE = "deed.twice";
    /** Dates of a round that come in the wrong order. */
    public static final String ROUND_ORDER = "round.order";

    private Codes() {
    }
}
