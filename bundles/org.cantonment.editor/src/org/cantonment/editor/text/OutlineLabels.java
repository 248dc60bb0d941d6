package org.cantonment.editor.text;

import java.util.function.Supplier;

import org.cantonment.editor.model.DocumentModel;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;

/** Label, quieter detail and icon of an outline item. */
final class OutlineLabels extends LabelProvider implements IStyledLabelProvider {

    private final Icons icons;
    private final Supplier<DocumentModel> model;

    OutlineLabels(Icons icons, Supplier<DocumentModel> model) {
        this.icons = icons;
        this.model = model;
    }

    @Override
    public StyledString getStyledText(Object element) {
        OutlineItem item = (OutlineItem) element;
        StyledString text = new StyledString(item.node().label());
        if (!item.node().detail().isEmpty()) {
            text.append("  " + item.node().detail(), StyledString.QUALIFIER_STYLER);
        }
        return text;
    }

    @Override
    public String getText(Object element) {
        return getStyledText(element).getString();
    }

    @Override
    public Image getImage(Object element) {
        DocumentModel known = model.get();
        return known == null ? null : icons.get(known.host(), ((OutlineItem) element).node().icon());
    }
}
