package org.cantonment.notation.names;

import java.util.List;

import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.linking.impl.AbstractLinkingService;
import org.eclipse.xtext.linking.impl.XtextLinkingDiagnostic;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** Links one written name with one look-up in the folder's table; says when a name is open or in small letters. */
public class BookLinkingService extends AbstractLinkingService {

    @Override
    public List<EObject> getLinkedObjects(EObject context, EReference reference, INode node) {
        String text = NodeModelUtils.getTokenText(node);
        Resource resource = context.eResource();
        if (text.isEmpty() || resource == null || resource.getResourceSet() == null) {
            return List.of();
        }
        List<Entry> found = new Lookup(NameTable.of(resource.getResourceSet())).find(context, reference, text);
        if (found.isEmpty()) {
            return List.of();
        }
        Entry best = found.get(0);
        if (found.size() > 1 && !best.book().equals(found.get(1).book())) {
            open(resource, node, text, found);
        } else if (!text.endsWith(best.name())) {
            resource.getWarnings().add(new XtextLinkingDiagnostic(node,
                    "Names begin with a capital: this is read as '" + best.name() + "'.", Codes.CAPITAL, text,
                    text.substring(0, text.indexOf('/') + 1) + best.name()));
        }
        return List.of(best.getEObjectOrProxy());
    }

    private static void open(Resource resource, INode node, String text, List<Entry> found) {
        String[] full = found.stream().map(entry -> entry.book() + '/' + entry.name()).distinct().toArray(String[]::new);
        resource.getErrors().add(new XtextLinkingDiagnostic(node, "'" + text + "' stands in two books; say which: "
                + String.join(" or ", full) + ".", Codes.AMBIGUOUS, full));
    }
}
