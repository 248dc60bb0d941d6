package org.cantonment.notation.scoping;

import java.util.List;

import org.cantonment.notation.names.Lookup;
import org.cantonment.notation.names.NameTable;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.scoping.IScope;
import org.eclipse.xtext.scoping.impl.SimpleScope;

/** Which names may stand where, for completion; linking asks {@link Lookup} itself and makes no scope. */
public class BookScopeProvider extends AbstractBookScopeProvider {

    @Override
    public IScope getScope(EObject context, EReference reference) {
        if (context.eResource() == null || context.eResource().getResourceSet() == null) {
            return IScope.NULLSCOPE;
        }
        Lookup lookup = new Lookup(NameTable.of(context.eResource().getResourceSet()));
        return new SimpleScope(List.copyOf(lookup.all(context, reference)));
    }
}
