package org.cantonment.editor.text;

import org.cantonment.editor.api.Link;
import org.cantonment.editor.model.DocumentModels;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.hyperlink.AbstractHyperlinkDetector;
import org.eclipse.jface.text.hyperlink.IHyperlink;

/** Finds the use of a name under the pointer, in the newest snapshot. */
final class NameLinks extends AbstractHyperlinkDetector {

    @Override
    public IHyperlink[] detectHyperlinks(ITextViewer viewer, IRegion region, boolean severalAllowed) {
        Link link = DocumentModels.all().of(viewer.getDocument())
                .filter(model -> model.snapshot().version() == model.version())
                .flatMap(model -> model.snapshot().linkAt(region.getOffset())).orElse(null);
        return link == null ? null : new IHyperlink[] { new NameLink(link) };
    }
}
