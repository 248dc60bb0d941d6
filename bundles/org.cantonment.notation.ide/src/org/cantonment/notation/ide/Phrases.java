package org.cantonment.notation.ide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;

/** The words of ours that a piece of the grammar may begin with; where it is nothing but words, all of them in a row. */
final class Phrases {

    private Phrases() {
    }

    /**
     * @param element what may come next
     * @return words or rows of words in the grammar's order; none if names or numbers come next
     */
    static Set<String> of(AbstractElement element) {
        if (element instanceof Keyword keyword) {
            return Set.of(keyword.getValue());
        }
        AbstractElement inner = element instanceof Assignment assignment ? assignment.getTerminal() : element;
        Set<String> found = new LinkedHashSet<>();
        if (inner instanceof RuleCall call && call.getRule() instanceof ParserRule rule && onlyWords(rule)) {
            found.addAll(rows(rule.getAlternatives()));
        } else if (element instanceof Assignment) {
            EcoreUtil2.eAllOfType(inner, Keyword.class).forEach(keyword -> found.add(keyword.getValue()));
        }
        found.remove("");
        return found;
    }

    private static boolean onlyWords(ParserRule rule) {
        return EcoreUtil2.eAllOfType(rule.getAlternatives(), RuleCall.class).isEmpty();
    }

    private static List<String> rows(AbstractElement element) {
        List<String> rows = new ArrayList<>();
        if (element instanceof Keyword keyword) {
            rows.add(keyword.getValue());
        } else if (element instanceof Alternatives alternatives) {
            alternatives.getElements().forEach(each -> rows.addAll(rows(each)));
        } else if (element instanceof Group group) {
            rows.add("");
            for (AbstractElement each : group.getElements()) {
                List<String> next = rows(each);
                List<String> before = List.copyOf(rows);
                rows.clear();
                before.forEach(start -> next.forEach(end -> rows.add((start + ' ' + end).strip())));
            }
        }
        if (GrammarUtil.isOptionalCardinality(element)) {
            rows.add(0, "");
        }
        return rows;
    }
}
