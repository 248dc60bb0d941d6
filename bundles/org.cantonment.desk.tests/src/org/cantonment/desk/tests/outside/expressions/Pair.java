package org.cantonment.desk.tests.outside.expressions;

/** The same thing said in the notation and in the other language. */
record Pair(String ours, String theirs) {

    /** Both sides around a word of each. */
    Pair with(String word, String sign, Pair right) {
        return new Pair(ours + ' ' + word + ' ' + right.ours, theirs + ' ' + sign + ' ' + right.theirs);
    }
}
