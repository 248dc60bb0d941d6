package org.cantonment.editor.text;

import java.util.List;

import org.eclipse.jface.viewers.ITreeContentProvider;

/** The tree of outline items. */
final class OutlineContent implements ITreeContentProvider {

    @Override
    public Object[] getElements(Object input) {
        return ((List<?>) input).toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        return ((OutlineItem) parent).children().toArray();
    }

    @Override
    public Object getParent(Object element) {
        return element instanceof OutlineItem item ? item.parent() : null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return !((OutlineItem) element).children().isEmpty();
    }
}
