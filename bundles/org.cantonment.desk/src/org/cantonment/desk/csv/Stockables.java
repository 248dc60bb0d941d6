package org.cantonment.desk.csv;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Range;
import org.cantonment.notation.form.Near;

/** Everything that may lie on a shelf, found by what a table calls it. */
final class Stockables {
    private final Map<String, Set<Id>> byWord = new HashMap<>();
    private final Map<String, String> spelt = new LinkedHashMap<>();
    private final Map<String, Integer> bare = new HashMap<>();
    private final Set<Id> pieces = new HashSet<>();

    Stockables(List<Range> ranges) {
        for (Range range : ranges) {
            range.pieces().forEach(piece -> pieces.add(piece.id()));
            List<Titled> all = new ArrayList<>(range.pieces());
            all.addAll(range.parts());
            all.addAll(range.boxes());
            all.addAll(range.extras());
            all.addAll(range.bits());
            all.forEach(this::add);
            range.boxes().forEach(this::codes);
        }
    }

    private void add(Titled thing) {
        bare.merge(thing.id().name(), 1, Integer::sum);
        word(thing.id().name(), thing.id());
        word(thing.id().text(), thing.id());
        word(thing.title(), thing.id());
    }

    private void codes(Box box) {
        box.codes().forEach(code -> word(code, box.id()));
    }

    private void word(String word, Id id) {
        byWord.computeIfAbsent(key(word), any -> new TreeSet<>()).add(id);
        spelt.putIfAbsent(word, word);
    }

    private static String key(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }

    /** What a word may mean; several if it is not plain. What a piece and its box are both called means the piece. */
    Set<Id> find(String word) {
        Set<Id> found = byWord.getOrDefault(key(word), Set.of());
        Set<Id> models = new TreeSet<>(found);
        models.retainAll(pieces);
        return models.size() == 1 ? models : found;
    }

    /** The nearest word that means something. */
    Optional<String> near(String word) {
        return Near.of(word.strip(), spelt.keySet());
    }

    /** As a shelf of these books writes it: bare where only one thing has the name. */
    String written(Id id) {
        return bare.getOrDefault(id.name(), 0) > 1 ? id.text() : id.name();
    }
}
