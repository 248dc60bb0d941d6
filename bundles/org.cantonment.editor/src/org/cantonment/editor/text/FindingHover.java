package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Link;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.FindingAnnotation;
import org.cantonment.editor.model.Found;
import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.text.DefaultInformationControl;
import org.eclipse.jface.text.IInformationControlCreator;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextHoverExtension;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.xtext.resource.EObjectAtOffsetHelper;
import org.eclipse.xtext.resource.XtextResource;

/** Says what was found at a place, or else what the name there stands for. */
public final class FindingHover implements ITextHover, ITextHoverExtension {

    private static final int LIMIT_SECONDS = 2;

    private final ISourceViewer viewer;

    FindingHover(ISourceViewer viewer) {
        this.viewer = viewer;
    }

    @Override
    public String getHoverInfo(ITextViewer textViewer, IRegion region) {
        List<Found> found = at(viewer.getAnnotationModel(), region.getOffset());
        List<String> lines = new ArrayList<>();
        for (Found one : found) {
            Finding finding = one.finding();
            lines.add(finding.severity().word() + ": " + finding.message());
            if (!finding.rule().name().isEmpty()) {
                lines.add("    " + finding.rule().label());
            }
            if (!finding.advice().isEmpty()) {
                lines.add("    " + finding.advice());
            }
            finding.fixes().forEach(fix -> lines.add("    Ctrl+1: " + fix.label()));
        }
        String documentation = documentation(textViewer, region.getOffset());
        if (!documentation.isEmpty()) {
            lines.add(documentation);
        }
        return lines.isEmpty() ? null : String.join("\n", lines);
    }

    /** Plain text: the lines of a card stay lines. */
    @Override
    public IInformationControlCreator getHoverControlCreator() {
        return parent -> new DefaultInformationControl(parent, (String) null, null);
    }

    @Override
    public IRegion getHoverRegion(ITextViewer textViewer, int offset) {
        Optional<DocumentModel> model = DocumentModels.all().of(textViewer.getDocument());
        Optional<Link> link = model.flatMap(known -> known.snapshot().linkAt(offset));
        return link.<IRegion>map(use -> new Region(use.offset(), use.length())).orElseGet(() -> new Region(offset, 0));
    }

    /** The findings that cover a place, gravest first. */
    static List<Found> at(IAnnotationModel annotations, int offset) {
        List<Found> found = new ArrayList<>();
        if (annotations != null) {
            for (Iterator<Annotation> all = annotations.getAnnotationIterator(); all.hasNext();) {
                if (all.next() instanceof FindingAnnotation mine) {
                    Position place = annotations.getPosition(mine);
                    if (place != null && place.offset <= offset && offset <= place.offset + place.length) {
                        found.add(mine.found());
                    }
                }
            }
        }
        found.sort(Comparator.comparing(one -> one.finding().severity()));
        return found;
    }

    private static String documentation(ITextViewer viewer, int offset) {
        Optional<DocumentModel> model = DocumentModels.all().of(viewer.getDocument());
        if (model.isEmpty() || model.get().tools() == null) {
            return "";
        }
        try {
            return model.get().read((resource, cancel) -> documentation(model.get(), resource, offset))
                    .get(LIMIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException moved) {
            Thread.currentThread().interrupt(); // the pointer has moved on
        } catch (TimeoutException busy) {
            return ""; // a hover that comes late is none
        } catch (ExecutionException failure) {
            ILog.of(FindingHover.class).error("No documentation", failure.getCause());
        }
        return "";
    }

    private static String documentation(DocumentModel model, XtextResource resource, int offset) {
        String ofPlace = model.host().documentation(resource.getParseResult().getRootNode().getText(), offset);
        if (!ofPlace.isEmpty()) {
            return ofPlace;
        }
        EObjectAtOffsetHelper finder = resource.getResourceServiceProvider().get(EObjectAtOffsetHelper.class);
        EObject thing = finder.resolveCrossReferencedElementAt(resource, offset);
        if (thing == null || thing.eIsProxy()) {
            thing = finder.resolveContainedElementAt(resource, offset);
        }
        return thing == null ? "" : model.host().documentation(thing);
    }
}
