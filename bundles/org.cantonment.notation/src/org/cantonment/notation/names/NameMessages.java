package org.cantonment.notation.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.notation.form.Codes;
import org.cantonment.notation.form.Near;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.diagnostics.DiagnosticMessage;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.linking.impl.LinkingDiagnosticMessageProvider;

/** Says that nobody has a name, what would have been wanted, and the nearest name there is. */
public class NameMessages extends LinkingDiagnosticMessageProvider {

    @Override
    public DiagnosticMessage getUnresolvedProxyMessage(ILinkingDiagnosticContext context) {
        String text = context.getLinkText();
        EReference reference = context.getReference();
        List<String> known = known(context.getContext(), reference);
        Optional<String> near = Near.of(text.substring(text.indexOf('/') + 1), known);
        String wanted = Kinds.of(reference.getEReferenceType());
        String message = "There is no " + wanted + " called '" + text + "'"
                + near.map(name -> "; did you mean '" + name + "'?").orElse(".");
        String[] data = near.map(name -> new String[] { text, name }).orElse(new String[] { text });
        return new DiagnosticMessage(message, Severity.ERROR, Codes.UNKNOWN, data);
    }

    private static List<String> known(EObject context, EReference reference) {
        if (context.eResource() == null || context.eResource().getResourceSet() == null) {
            return List.of();
        }
        List<String> names = new ArrayList<>();
        for (Entry entry : new Lookup(NameTable.of(context.eResource().getResourceSet())).all(context, reference)) {
            names.add(entry.name());
        }
        return names;
    }
}
