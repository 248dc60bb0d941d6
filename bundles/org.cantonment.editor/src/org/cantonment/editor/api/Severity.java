package org.cantonment.editor.api;

/** How grave a finding is. The order runs from the gravest to the least. */
public enum Severity {
    /** Not allowed as it stands. */
    BREACH("Breach"),
    /** Allowed, but most likely not what was meant. */
    CAUTION("Caution"),
    /** Worth knowing. */
    NOTE("Note");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /**
     * The word shown beside the icon, so that neither colour nor shape has to be told apart.
     *
     * @return one capitalised English word
     */
    public String word() {
        return word;
    }
}
