package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cantonment.editor.api.StyledRun;
import org.cantonment.editor.api.TextKind;
import org.cantonment.model.book.Named;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

/** Where names are given, as against where they are used. */
final class NameKinds {

    private NameKinds() {
    }

    static List<StyledRun> of(XtextResource resource) {
        List<StyledRun> runs = new ArrayList<>();
        for (TreeIterator<EObject> all = resource.getAllContents(); all.hasNext();) {
            EObject thing = all.next();
            if (thing instanceof Named) {
                EStructuralFeature name = thing.eClass().getEStructuralFeature("name");
                for (INode node : NodeModelUtils.findNodesForFeature(thing, name)) {
                    if (node.getLength() > 0) {
                        runs.add(new StyledRun(node.getOffset(), node.getLength(), TextKind.DEFINITION));
                    }
                }
            }
        }
        runs.sort(Comparator.comparingInt(StyledRun::offset));
        return runs;
    }
}
