package org.cantonment.editor.text;

import org.cantonment.editor.api.Link;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.hyperlink.IHyperlink;

/** Leads from the use of a name to where it is given. */
public final class NameLink implements IHyperlink {

    private final Link link;

    NameLink(Link link) {
        this.link = link;
    }

    @Override
    public IRegion getHyperlinkRegion() {
        return new Region(link.offset(), link.length());
    }

    @Override
    public String getTypeLabel() {
        return "Name";
    }

    @Override
    public String getHyperlinkText() {
        return "Go to " + link.target().label();
    }

    @Override
    public void open() {
        Places.open(link.target());
    }
}
