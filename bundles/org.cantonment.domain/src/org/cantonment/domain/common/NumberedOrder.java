package org.cantonment.domain.common;

/** Order of texts in which runs of digits count by their value. */
final class NumberedOrder {

    private NumberedOrder() {
    }

    static int compare(String a, String b) {
        int i = alike(a, b);
        int j = i;
        while (i < a.length() && j < b.length()) {
            if (digit(a.charAt(i)) && digit(b.charAt(j))) {
                int endA = end(a, i);
                int endB = end(b, j);
                int order = compareRuns(a, skipZeros(a, i, endA), endA, b, skipZeros(b, j, endB), endB);
                if (order != 0) {
                    return order;
                }
                i = endA;
                j = endB;
            } else if (a.charAt(i) != b.charAt(j)) {
                return Character.compare(a.charAt(i), b.charAt(j));
            } else {
                i++;
                j++;
            }
        }
        int rest = Integer.compare(a.length() - i, b.length() - j);
        return rest != 0 ? rest : a.compareTo(b);
    }

    /** Where texts may begin to differ: what stands before is the same, and no run of digits is cut in two. */
    private static int alike(String a, String b) {
        int end = Math.min(a.length(), b.length());
        int at = 0;
        while (at < end && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        while (at > 0 && digit(a.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    private static int compareRuns(String a, int fromA, int endA, String b, int fromB, int endB) {
        int byLength = Integer.compare(endA - fromA, endB - fromB);
        for (int k = 0; byLength == 0 && k < endA - fromA; k++) {
            int order = Character.compare(a.charAt(fromA + k), b.charAt(fromB + k));
            if (order != 0) {
                return order;
            }
        }
        return byLength;
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    private static int end(String text, int from) {
        int at = from;
        while (at < text.length() && digit(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static int skipZeros(String text, int from, int end) {
        int at = from;
        while (at < end - 1 && text.charAt(at) == '0') {
            at++;
        }
        return at;
    }
}
