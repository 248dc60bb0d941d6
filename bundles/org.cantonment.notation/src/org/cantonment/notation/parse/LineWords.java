package org.cantonment.notation.parse;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.notation.services.BookGrammarAccess;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Alternatives;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CompoundElement;
import org.eclipse.xtext.Group;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;

import com.google.inject.Inject;
import com.google.inject.Singleton;

/** The words that may begin a line, read off the grammar so that they cannot drift from it. */
@Singleton
public class LineWords {

    private static final String[][] CARDS = { { "range", "RangeCardHead", "RangeFact", "RangeInner" },
            { "rules", "RulesCardHead", "RulesFact", "RulesInner" }, { "shelf", "ShelfCardHead", "ShelfLine" },
            { "list", "ListCardHead", "ListFact" }, { "campaign", "CampaignCardHead", "CampaignFact", "CampaignInnerFact" },
            { "week", "CampaignCardHead", "CampaignInnerFact", "CampaignInnerFact" },
            { "names", "CampaignCardHead", "CampaignFact", "CampaignInnerFact" } };

    private final BookGrammarAccess grammar;

    /** @param grammar the notation's grammar */
    @Inject
    public LineWords(BookGrammarAccess grammar) {
        this.grammar = grammar;
    }

    /** @return the words that may begin a book */
    public List<String> ofBooks() {
        List<String> words = new ArrayList<>();
        for (String[] card : CARDS) {
            words.add(card[0]);
        }
        return words;
    }

    /**
     * @param book the first word of the book
     * @param dots how many dots the line has, 0 to 4
     * @return the words of ours that may begin such a line, in the grammar's order; all book words for an unknown book
     */
    public List<String> of(String book, int dots) {
        for (String[] card : CARDS) {
            if (card[0].equals(book)) {
                return first(card[Math.min(dots + 1, card.length - 1)]);
            }
        }
        return ofBooks();
    }

    private List<String> first(String ruleName) {
        AbstractRule rule = org.eclipse.xtext.GrammarUtil.findRuleForName(grammar.getGrammar(), ruleName);
        Set<String> words = new LinkedHashSet<>();
        collect(rule.getAlternatives(), words);
        return List.copyOf(words);
    }

    /** @return whether the element may be empty, so that what follows can come first too */
    private boolean collect(AbstractElement element, Set<String> words) {
        boolean skippable = element.getCardinality() != null && !"+".equals(element.getCardinality());
        if (element instanceof Keyword keyword) {
            words.add(keyword.getValue());
        } else if (element instanceof Assignment assignment) {
            collect(assignment.getTerminal(), words);
        } else if (element instanceof RuleCall call && call.getRule() instanceof org.eclipse.xtext.ParserRule) {
            collect(call.getRule().getAlternatives(), words);
        } else if (element instanceof Alternatives alternatives) {
            alternatives.getElements().forEach(each -> collect(each, words));
        } else if (element instanceof Group group) {
            for (AbstractElement each : group.getElements()) {
                if (!collect(each, words)) {
                    return skippable;
                }
            }
            return true;
        } else if (element instanceof CompoundElement compound) {
            compound.getElements().forEach(each -> collect(each, words));
        }
        return skippable || element instanceof org.eclipse.xtext.Action;
    }
}
