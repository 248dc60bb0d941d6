package org.cantonment.editor.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cantonment.editor.api.FileGroup;
import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.api.Link;
import org.cantonment.editor.api.Target;
import org.eclipse.core.resources.IFile;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.linking.lazy.LazyLinkingResource;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.util.ITextRegion;

/** Looks through one up-to-date resource and writes down what the screen wants to know. */
final class Examination {

    private final LanguageHost host;
    private final XtextTools tools;
    private final XtextResource resource;
    private final FileGroup group;
    private final IFile file;
    private final CancelIndicator cancel;

    Examination(LanguageHost host, IFile file, XtextTools tools, XtextResource resource, CancelIndicator cancel) {
        this.host = host;
        this.file = file;
        this.group = host.group(file);
        this.tools = tools;
        this.resource = resource;
        this.cancel = cancel;
    }

    Snapshot run(long version, String text) {
        if (resource instanceof LazyLinkingResource lazy) {
            lazy.resolveLazyCrossReferences(cancel);
        }
        List<Found> found = new ArrayList<>();
        for (Finding finding : group.ownFindings(file, cancel)) {
            found.add(new Found(finding, false));
        }
        tools.cancelling().checkCanceled(cancel);
        found.sort(byPlace());
        return new Snapshot(version, text, found, false, host.finerKinds(resource), host.outline(resource), links());
    }

    static Comparator<Found> byPlace() {
        return Comparator.<Found>comparingInt(found -> found.finding().offset())
                .thenComparing(found -> found.finding().severity()).thenComparing(found -> found.finding().message());
    }

    private List<Link> links() {
        List<Link> links = new ArrayList<>();
        for (TreeIterator<EObject> all = resource.getAllContents(); all.hasNext();) {
            EObject thing = all.next();
            tools.cancelling().checkCanceled(cancel);
            for (EReference reference : thing.eClass().getEAllReferences()) {
                if (!reference.isContainment() && !reference.isContainer() && !reference.isDerived()
                        && thing.eIsSet(reference)) {
                    addLinks(thing, reference, links);
                }
            }
        }
        links.sort(Comparator.comparingInt(Link::offset));
        return links;
    }

    private void addLinks(EObject thing, EReference reference, List<Link> links) {
        List<INode> nodes = NodeModelUtils.findNodesForFeature(thing, reference);
        List<?> targets = reference.isMany() ? (List<?>) thing.eGet(reference) : List.of(thing.eGet(reference));
        for (int i = 0; i < Math.min(nodes.size(), targets.size()); i++) {
            Target target = target((EObject) targets.get(i), NodeModelUtils.getTokenText(nodes.get(i)));
            ITextRegion region = nodes.get(i).getTextRegion();
            if (target != null && region.getLength() > 0) {
                links.add(new Link(region.getOffset(), region.getLength(), target));
            }
        }
    }

    private Target target(EObject thing, String label) {
        Resource home = thing.eIsProxy() ? null : thing.eResource();
        if (home == null) {
            return null;
        }
        ITextRegion region = tools.places().getSignificantTextRegion(thing);
        return region == null ? null
                : new Target(home.getURI().toString(), region.getOffset(), region.getLength(), label);
    }
}
