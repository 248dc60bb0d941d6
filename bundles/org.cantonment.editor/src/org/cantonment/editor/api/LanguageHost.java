package org.cantonment.editor.api;

import java.util.List;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.xtext.resource.XtextResource;

import com.google.inject.Injector;

/**
 * A language that wants to be edited. Register an implementation as an OSGi service; the editor finds
 * it by file name extension. Unless stated otherwise every method is called on the language worker,
 * one call at a time.
 */
public interface LanguageHost {

    /**
     * The file name extensions of the language. Called on any thread.
     *
     * @return extensions without the dot, in lower case
     */
    Set<String> fileExtensions();

    /**
     * The one injector of the language, with the services of {@code org.eclipse.xtext.ide} bound. The
     * first call may take a second.
     *
     * @return always the same injector
     */
    Injector injector();

    /**
     * The group a file belongs to.
     *
     * @param file a file with one of the language's extensions
     * @return the group; the same one for all files that see one another
     */
    FileGroup group(IFile file);

    /**
     * What may stand at a place.
     *
     * @param resource an up-to-date resource
     * @param text its text
     * @param offset where the caret stands, in characters from the start
     * @return suggestions that fit what is typed already, the best first
     */
    List<Suggestion> complete(XtextResource resource, String text, int offset);

    /**
     * The lines of the outline.
     *
     * @param resource an up-to-date resource
     * @return the top-level lines in the order of the text
     */
    List<OutlineNode> outline(XtextResource resource);

    /**
     * What to say about a thing when the pointer rests on its name.
     *
     * @param thing the thing that the name stands for
     * @return plain text, lines parted by {@code \n}; empty to say nothing
     */
    String documentation(EObject thing);

    /**
     * What to say when the pointer rests on a place, before anybody asks what thing stands there: for names that the
     * language itself does not resolve.
     *
     * @param text the whole text
     * @param offset the place, in characters from the start
     * @return plain text, lines parted by {@code \n}; empty to say nothing
     */
    default String documentation(String text, int offset) {
        return "";
    }

    /**
     * The edits that lay out a stretch of the text as it should be.
     *
     * @param text the whole text
     * @param offset where the stretch begins, in characters
     * @param length how many characters it has
     * @return edits in ascending order that do not overlap; empty if it is well laid out already
     */
    List<TextChange> format(String text, int offset, int length);

    /**
     * Finer kinds than those the lexer can see.
     *
     * @param resource an up-to-date resource, linked
     * @return runs in ascending order that do not overlap
     */
    List<StyledRun> finerKinds(XtextResource resource);

    /**
     * The kind of a lexer token. Called on the screen's thread: must be quick.
     *
     * @param tokenName the grammar's name of the token: {@code RULE_…}, or the quoted keyword
     * @return its kind
     */
    default TextKind kindOfToken(String tokenName) {
        return TokenNames.kindOf(tokenName);
    }

    /**
     * How the line after a line begins, when Enter is pressed at its end. Called on the screen's thread.
     *
     * @param line the line that is left, without its end
     * @return the text to begin with; empty for nothing; null to clear the line that is left instead of
     *         beginning another one
     */
    default String nextLine(String line) {
        int blanks = 0;
        while (blanks < line.length() && Character.isWhitespace(line.charAt(blanks))) {
            blanks++;
        }
        return line.substring(0, blanks);
    }

    /**
     * An icon for outline lines and proposals. Called on the screen's thread.
     *
     * @param name a name that this host gave to an outline line, or the kind of a proposal
     * @return the icon, or null if there is none of this name
     */
    ImageDescriptor icon(String name);
}
