package org.cantonment.notation.parse;

import org.eclipse.xtext.conversion.ValueConverterWithValueException;
import org.eclipse.xtext.nodemodel.INode;

/** A value that could be read but not taken as it stands: it has a code of its own, and the value taken instead. */
final class BadValue extends ValueConverterWithValueException {

    private static final long serialVersionUID = 1L;

    private final String code;

    BadValue(String code, String message, INode node, Object value) {
        super(message, node, value, null);
        this.code = code;
    }

    String code() {
        return code;
    }
}
