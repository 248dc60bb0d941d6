package org.cantonment.notation.parse;

import org.cantonment.notation.form.Codes;
import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverter;
import org.eclipse.xtext.conversion.impl.AbstractDeclarativeValueConverterService;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Text to value. Everything is read generously: a number out of bounds is brought to the nearest bound, a text without
 * its closing quote ends with the line, and either says so at its place.
 */
public class BookValues extends AbstractDeclarativeValueConverterService {

    /** The largest count, number of points, strength or percentage that a book may say. */
    public static final int LARGEST = 1_000_000;

    /** @return whole numbers from 0 to {@link #LARGEST} */
    @ValueConverter(rule = "INT")
    public IValueConverter<Integer> whole() {
        return new IValueConverter<>() {
            @Override
            public Integer toValue(String string, INode node) {
                if (string.startsWith("-")) {
                    throw new BadValue(Codes.NUMBER_RANGE, "A number here is at least 0.", node, 0);
                }
                String digits = string.replaceFirst("^0+(?=.)", "");
                if (digits.length() > 7 || Integer.parseInt(digits) > LARGEST) {
                    throw new BadValue(Codes.NUMBER_RANGE, "A number here is at most 1,000,000.", node, LARGEST);
                }
                return Integer.valueOf(digits);
            }

            @Override
            public String toString(Integer value) {
                return value.toString();
            }
        };
    }

    /** @return texts without their quotes, plain or curly */
    @ValueConverter(rule = "STRING")
    public IValueConverter<String> quoted() {
        return new IValueConverter<>() {
            @Override
            public String toValue(String string, INode node) {
                char last = string.charAt(string.length() - 1);
                boolean closed = string.length() > 1 && (last == '"' || last == '\u201C' || last == '\u201D');
                if (!closed) {
                    throw new BadValue(Codes.QUOTE, "This text has no closing quote.", node, string.substring(1).strip());
                }
                return string.substring(1, string.length() - 1);
            }

            @Override
            public String toString(String value) {
                return '"' + value + '"';
            }
        };
    }
}
