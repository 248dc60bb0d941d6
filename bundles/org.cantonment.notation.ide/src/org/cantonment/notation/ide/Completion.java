package org.cantonment.notation.ide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.model.book.Named;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.notation.names.Entry;
import org.cantonment.notation.names.Kinds;
import org.cantonment.notation.names.Lookup;
import org.cantonment.notation.names.NameTable;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.ide.editor.contentassist.IPrefixMatcher;
import org.eclipse.xtext.ide.editor.contentassist.antlr.FollowElementComputer;
import org.eclipse.xtext.ide.editor.contentassist.antlr.IContentAssistParser;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import com.google.inject.Inject;

/**
 * What may stand where somebody types: our words and the names that fit, each once, words first. The grammar is asked
 * about the book's first line and the card being typed only, which is all that decides it, so that the size of the book
 * does not matter.
 */
public class Completion {

    private final IContentAssistParser parser;
    private final FollowElementComputer computer;
    private final IPrefixMatcher matcher;

    @Inject
    Completion(IContentAssistParser parser, FollowElementComputer computer, IPrefixMatcher matcher) {
        this.parser = parser;
        this.computer = computer;
        this.matcher = matcher;
    }

    /**
     * @param resource a book, up to date with the text
     * @param text     its text
     * @param offset   where the cursor stands
     * @return what may be put in there, words of ours first in the grammar's order, then names in the order of books
     */
    public List<Proposal> at(XtextResource resource, String text, int offset) {
        int start = offset;
        while (start > 0 && NameSigns.isPart(text.charAt(start - 1))) {
            start--;
        }
        String typed = text.substring(start, offset);
        Set<AbstractElement> expected = new LinkedHashSet<>();
        computer.computeFollowElements(parser.getFollowElements(window(text, start), false),
                (Collection<AbstractElement>) expected);
        Map<String, Proposal> found = new LinkedHashMap<>();
        int length = offset - start;
        for (AbstractElement element : expected) {
            words(element, typed, start, length, found);
        }
        EObject context = context(resource, start);
        boolean onFollows = text.startsWith(" on ", nameEnd(text, offset));
        for (AbstractElement element : expected) {
            if (element instanceof Assignment assignment && assignment.getTerminal() instanceof CrossReference ref
                    && context != null) {
                EReference reference = GrammarUtil.getReference(ref);
                if (reference == RulesetPackage.Literals.OPTIONS_ON__OPTION && !onFollows) {
                    options(resource, typed, start, length, found);
                } else {
                    names(resource, context, reference, typed, start, length, found);
                }
            } else if (element instanceof CrossReference ref && context != null) {
                names(resource, context, GrammarUtil.getReference(ref), typed, start, length, found);
            }
        }
        return new ArrayList<>(found.values());
    }

    /** The first line, and the text from the last line without dots up to the place. */
    private static String window(String text, int end) {
        int firstEnd = firstContentEnd(text, end);
        int card = text.lastIndexOf('\n', Math.max(0, end - 1)) + 1;
        while (card > firstEnd && startsDottedOrBlank(text, card, end)) {
            card = text.lastIndexOf('\n', card - 2) + 1;
        }
        return card <= firstEnd ? text.substring(0, end) : text.substring(0, firstEnd) + text.substring(card, end);
    }

    /** Where the line after the first one that says something begins. */
    private static int firstContentEnd(String text, int end) {
        int at = 0;
        while (at < end) {
            int next = text.indexOf('\n', at) + 1;
            if (next <= 0 || next > end) {
                return end;
            }
            String line = text.substring(at, next).strip();
            if (!line.isEmpty() && line.charAt(0) != '#' && !line.equals("\uFEFF")) {
                return next;
            }
            at = next;
        }
        return end;
    }

    private static boolean startsDottedOrBlank(String text, int at, int end) {
        int i = at;
        while (i < end && (text.charAt(i) == ' ' || text.charAt(i) == '\t')) {
            i++;
        }
        return i < end && (text.charAt(i) == '.' || text.charAt(i) == '#' || text.charAt(i) == '\n'
                || text.charAt(i) == '\r');
    }

    private void words(AbstractElement element, String typed, int start, int length, Map<String, Proposal> found) {
        for (String word : Phrases.of(element)) {
            if (Character.isLetter(word.charAt(0)) && matcher.isCandidateMatchingPrefix(word, typed)) {
                found.putIfAbsent(word, new Proposal(word, "", false, start, length));
            }
        }
    }

    private void names(XtextResource resource, EObject context, EReference reference, String typed, int start,
            int length, Map<String, Proposal> found) {
        Map<String, Entry> seen = new LinkedHashMap<>();
        for (Entry entry : new Lookup(NameTable.of(resource.getResourceSet())).all(context, reference)) {
            Entry other = seen.putIfAbsent(entry.name(), entry);
            boolean open = other != null && !other.book().equals(entry.book());
            String text = open ? entry.book() + '/' + entry.name() : entry.name();
            if ((other == null || open) && matcher.isCandidateMatchingPrefix(text, typed)) {
                found.putIfAbsent(text, new Proposal(text, description(entry), true, start, length));
            }
        }
    }

    /** In an expression an option is said with the unit it is on, so both are put in at once. */
    private void options(XtextResource resource, String typed, int start, int length, Map<String, Proposal> found) {
        for (Entry entry : NameTable.of(resource.getResourceSet()).allOwned(RulesetPackage.Literals.OPTION)) {
            if (matcher.isCandidateMatchingPrefix(entry.name(), typed)) {
                String text = entry.name() + " on " + entry.owner();
                found.putIfAbsent(text, new Proposal(text, description(entry), true, start, length));
            }
        }
    }

    private static int nameEnd(String text, int offset) {
        int end = offset;
        while (end < text.length() && NameSigns.isPart(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static String description(Entry entry) {
        String kind = Kinds.of(entry.type());
        return entry.getEObjectOrProxy() instanceof Named named && named.getLabel() != null
                && !named.getLabel().isEmpty() ? kind + ", " + named.getLabel() : kind;
    }

    /** The object whose line is being typed, or the card or book it will belong to. */
    private static EObject context(XtextResource resource, int offset) {
        if (resource.getParseResult() == null || resource.getParseResult().getRootASTElement() == null) {
            return null;
        }
        int at = Math.max(0, offset - 1);
        ILeafNode leaf = NodeModelUtils.findLeafNodeAtOffset(resource.getParseResult().getRootNode(), at);
        while (leaf != null && leaf.isHidden() && at > 0) {
            at = Math.max(0, leaf.getOffset() - 1);
            ILeafNode before = NodeModelUtils.findLeafNodeAtOffset(resource.getParseResult().getRootNode(), at);
            leaf = before == leaf ? null : before;
        }
        EObject object = leaf == null ? null : NodeModelUtils.findActualSemanticObjectFor(leaf);
        return object != null ? object : resource.getParseResult().getRootASTElement();
    }
}
