package org.cantonment.notation.ide;

import java.util.Locale;

import org.eclipse.xtext.ide.editor.contentassist.IPrefixMatcher;

/**
 * A name is found by its beginning, by the beginning of one of its parts, or by the first letters of its parts: {@code
 * gt}, {@code troop} and {@code gun-t} all find {@code Gun-Troop}. Upper and lower case count as equal.
 */
public class HumpMatcher implements IPrefixMatcher {

    @Override
    public boolean isCandidateMatchingPrefix(String name, String prefix) {
        String typed = prefix.toLowerCase(Locale.ROOT);
        String candidate = name.toLowerCase(Locale.ROOT);
        if (candidate.startsWith(typed) || candidate.contains('-' + typed) || candidate.contains('/' + typed)) {
            return true;
        }
        StringBuilder humps = new StringBuilder();
        for (String part : candidate.split("[-/]")) {
            if (!part.isEmpty()) {
                humps.append(part.charAt(0));
            }
        }
        return typed.length() > 1 && humps.indexOf(typed) == 0;
    }
}
