package org.cantonment.desk.cli;

/** Text from files and names as it may safely go to a terminal: on one line, without signs that steer the terminal. */
final class Plain {
    private Plain() {
    }

    /** The text with every control sign, line end and sign that turns the direction of writing shown as its number. */
    static String line(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (steers(text.charAt(i))) {
                return shown(text);
            }
        }
        return text;
    }

    private static String shown(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' || c == '\t') {
                out.append(' ');
            } else if (steers(c)) {
                out.append(String.format("<U+%04X>", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static boolean steers(char c) {
        return c < ' ' || c >= 0x7F && c < 0xA0 || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069
                || c == 0x2028 || c == 0x2029 || c == 0x200E || c == 0x200F || c == 0x061C;
    }
}
