package org.cantonment.desk;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** All codes that a finding of the product's own may have, with a sentence about each; docs/findings.md shows them. */
public final class FindingCodes {
    private static final class Holder {
        static final Map<String, String> ALL = read();
    }

    private FindingCodes() {
    }

    /** Whether a finding of our own may have this code. Plug-ins name their own. */
    public static boolean known(String code) {
        return Holder.ALL.containsKey(code);
    }

    /** A sentence about what the code means. */
    public static Optional<String> meaning(String code) {
        return Optional.ofNullable(Holder.ALL.get(code));
    }

    /** All codes with their sentences, in the order of the documentation. */
    public static Map<String, String> all() {
        return Holder.ALL;
    }

    private static Map<String, String> read() {
        Map<String, String> all = new LinkedHashMap<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                FindingCodes.class.getResourceAsStream("codes.tsv"), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                int tab = line.indexOf('\t');
                all.put(line.substring(0, tab), line.substring(tab + 1));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Collections.unmodifiableMap(all);
    }
}
