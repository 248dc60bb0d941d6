package org.cantonment.domain.common;

import java.util.Objects;

/**
 * The stable name of something that a text names or a finding points at: the book, a slash, the path in it,
 * and for a line a number sign and the line's number under its card. {@code Lake-Book/Few-Heavies},
 * {@code Lake-Book/Few-Heavies#2}, {@code Lake-Book/Gun-Troop/Long-Guns}, {@code Anna/4#7}.
 */
public record Id(String text) implements Comparable<Id> {

    /** @throws IllegalArgumentException if the text is empty */
    public Id {
        if (Objects.requireNonNull(text, "text").isEmpty()) {
            throw new IllegalArgumentException("An id is never empty");
        }
    }

    /** The id with this text. */
    public static Id of(String text) {
        return new Id(text);
    }

    /** The id of something by its name in a book. */
    public static Id of(String book, String name) {
        return new Id(book + '/' + name);
    }

    /** Something named under this. */
    public Id child(String name) {
        return new Id(text + '/' + name);
    }

    /** A line under this, counted from 1. */
    public Id line(int number) {
        return new Id(text + '#' + number);
    }

    /** The part before the first slash or number sign. */
    public String book() {
        int end = text.length();
        int slash = text.indexOf('/');
        int sign = text.indexOf('#');
        if (slash >= 0) {
            end = slash;
        }
        if (sign >= 0 && sign < end) {
            end = sign;
        }
        return text.substring(0, end);
    }

    /** The last name in it, without the number of a line. */
    public String name() {
        int sign = text.indexOf('#');
        int end = sign < 0 ? text.length() : sign;
        return text.substring(text.lastIndexOf('/', end - 1) + 1, end);
    }

    /** The card that a line stands under; the id itself if it is no line. */
    public Id card() {
        int sign = text.indexOf('#');
        return sign <= 0 ? this : new Id(text.substring(0, sign));
    }

    /** By text, but numbers by their value, so that line 10 comes after line 9. */
    @Override
    public int compareTo(Id other) {
        return NumberedOrder.compare(text, other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
