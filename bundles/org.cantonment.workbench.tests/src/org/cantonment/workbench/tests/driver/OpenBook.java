package org.cantonment.workbench.tests.driver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;

import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.FindingAnnotation;
import org.cantonment.editor.text.LanguageEditor;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.NotEnabledException;
import org.eclipse.core.commands.NotHandledException;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.handlers.IHandlerService;

/** An open book, and the hands that type in it. */
public final class OpenBook {

    /**
     * A finding as it is marked in the text.
     *
     * @param severity its annotation type's last part
     * @param text the marked text
     * @param offset where the mark begins
     * @param message what is said
     */
    public record Mark(String severity, String text, int offset, String message) {
    }

    private final LanguageEditor editor;

    OpenBook(LanguageEditor editor) {
        this.editor = editor;
    }

    /** The editor. */
    public LanguageEditor editor() {
        return editor;
    }

    /** The model of its document. */
    public DocumentModel model() {
        return editor.model().orElseThrow();
    }

    /** The whole text. */
    public String text() {
        return editor.document().get();
    }

    /** The widget that shows the text. */
    public StyledText widget() {
        return editor.viewer().getTextWidget();
    }

    /**
     * Puts the caret behind a text.
     *
     * @param text a text that occurs
     */
    public void caretBehind(String text) {
        editor.selectAndReveal(find(text) + text.length(), 0);
    }

    /**
     * Selects a text.
     *
     * @param text a text that occurs
     */
    public void select(String text) {
        editor.selectAndReveal(find(text), text.length());
    }

    /**
     * Where a text occurs first.
     *
     * @param text a text that occurs
     * @return characters from the start
     */
    public int find(String text) {
        int at = text().indexOf(text);
        if (at < 0) {
            throw new IllegalArgumentException("'" + text + "' does not occur in\n" + text());
        }
        return at;
    }

    /**
     * Types letters, one key after the other.
     *
     * @param letters what is typed
     */
    public void type(String letters) {
        for (char letter : letters.toCharArray()) {
            press(letter, letter);
        }
    }

    /** Takes the letter before the caret away. */
    public void backspace() {
        press(SWT.BS, SWT.BS);
    }

    private void press(char letter, int code) {
        Event event = new Event();
        event.character = letter;
        event.keyCode = code;
        widget().notifyListeners(SWT.KeyDown, event);
    }

    /** Undoes the last edit, as the menu does. */
    public void undo() {
        ((ITextOperationTarget) editor.viewer()).doOperation(ITextOperationTarget.UNDO);
    }

    /**
     * Runs a command with this editor active.
     *
     * @param id the command's id
     */
    public void run(String id) {
        editor.getSite().getPage().activate(editor);
        try {
            editor.getSite().getService(IHandlerService.class).executeCommand(id, null);
        } catch (ExecutionException | NotDefinedException | NotEnabledException | NotHandledException refused) {
            throw new IllegalStateException(refused);
        }
    }

    /** The findings as they are marked now, in ascending order of place. */
    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        IAnnotationModel annotations = editor.viewer().getAnnotationModel();
        for (Iterator<Annotation> all = annotations.getAnnotationIterator(); all.hasNext();) {
            if (all.next() instanceof FindingAnnotation finding) {
                Position place = annotations.getPosition(finding);
                String type = finding.getType();
                marks.add(new Mark(type.substring(type.lastIndexOf('.') + 1),
                        text().substring(place.offset, place.offset + place.length), place.offset,
                        finding.found().finding().message()));
            }
        }
        marks.sort(Comparator.comparingInt(Mark::offset));
        return marks;
    }

    /** The annotations of a type, as the texts that they mark. */
    public List<String> marked(String type) {
        List<Position> places = new ArrayList<>();
        IAnnotationModel annotations = editor.viewer().getAnnotationModel();
        for (Iterator<Annotation> all = annotations.getAnnotationIterator(); all.hasNext();) {
            Annotation annotation = all.next();
            if (type.equals(annotation.getType())) {
                places.add(annotations.getPosition(annotation));
            }
        }
        places.sort(Comparator.comparingInt(Position::getOffset));
        return places.stream().map(place -> text().substring(place.offset, place.offset + place.length)).toList();
    }
}
