package org.cantonment.desk.shopping;

/** An answer for a chat, sentence by sentence; what finds no room is left out. */
final class Reply {
    /** A reply is shorter than this. */
    static final int SHORTER_THAN = 500;

    private final StringBuilder text = new StringBuilder();

    Reply say(String sentence) {
        if (!sentence.isEmpty() && text.length() + sentence.length() + 1 < SHORTER_THAN) {
            text.append(text.length() == 0 ? "" : " ").append(sentence);
        }
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
