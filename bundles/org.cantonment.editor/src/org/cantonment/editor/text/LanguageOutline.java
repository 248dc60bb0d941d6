package org.cantonment.editor.text;

import java.util.List;
import java.util.function.Consumer;

import org.cantonment.editor.api.OutlineNode;
import org.cantonment.editor.model.DocumentModel;
import org.cantonment.editor.model.Snapshot;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.IPostSelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;

/** The outline of the open document, drawn from its snapshots; it follows the caret and leads it. */
public final class LanguageOutline extends ContentOutlinePage {

    private final LanguageEditor editor;
    private final Consumer<Snapshot> snapshots = this::snapshotTaken;
    private final ISelectionChangedListener caret = event -> followCaret();
    private DocumentModel model;
    private List<OutlineItem> items = List.of();
    private boolean following;
    private boolean disposed;

    LanguageOutline(LanguageEditor editor) {
        this.editor = editor;
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        TreeViewer tree = getTreeViewer();
        tree.setContentProvider(new OutlineContent());
        OutlineLabels labels = new OutlineLabels(new Icons(tree.getControl()), () -> model);
        tree.setLabelProvider(new DelegatingStyledCellLabelProvider(labels));
        tree.setUseHashlookup(true);
        if (editor.getSelectionProvider() instanceof IPostSelectionProvider provider) {
            provider.addPostSelectionChangedListener(caret);
        }
        if (model != null) {
            show(model.snapshot());
        }
    }

    boolean isDisposed() {
        return disposed;
    }

    void follow(DocumentModel followed) {
        leave();
        model = followed;
        model.addListener(snapshots);
        if (tree() != null) {
            show(model.snapshot());
        }
    }

    private void leave() {
        if (model != null) {
            model.removeListener(snapshots);
        }
        model = null;
    }

    private TreeViewer tree() {
        Control control = getControl();
        return control == null || control.isDisposed() ? null : getTreeViewer();
    }

    private void snapshotTaken(Snapshot snapshot) {
        TreeViewer tree = tree();
        if (tree != null) {
            tree.getControl().getDisplay().asyncExec(() -> show(snapshot));
        }
    }

    private void show(Snapshot snapshot) {
        TreeViewer tree = tree();
        if (tree == null || model == null || snapshot != model.snapshot()) {
            return; // a newer one is on its way
        }
        boolean first = items.isEmpty();
        Object[] open = tree.getExpandedElements();
        items = OutlineItem.roots(snapshot.outline());
        following = true;
        tree.getControl().setRedraw(false);
        tree.setInput(items);
        if (first) {
            tree.expandToLevel(3);
        } else {
            tree.setExpandedElements(open);
        }
        tree.getControl().setRedraw(true);
        following = false;
        followCaret();
    }

    /**
     * The outline as it is shown.
     *
     * @return its top-level lines; empty before the first snapshot
     */
    public List<OutlineNode> shown() {
        return items.stream().map(OutlineItem::node).toList();
    }

    private void followCaret() {
        TreeViewer tree = tree();
        if (tree != null && !tree.getControl().isFocusControl()
                && editor.getSelectionProvider().getSelection() instanceof ITextSelection text) {
            OutlineItem item = OutlineItem.at(items, text.getOffset());
            following = true;
            tree.setSelection(item == null ? StructuredSelection.EMPTY : new StructuredSelection(item), true);
            following = false;
        }
    }

    @Override
    public void selectionChanged(SelectionChangedEvent event) {
        super.selectionChanged(event);
        if (!following && event.getStructuredSelection().getFirstElement() instanceof OutlineItem item) {
            editor.selectAndReveal(item.node().offset(), 0);
        }
    }

    @Override
    public void dispose() {
        disposed = true;
        leave();
        if (editor.getSelectionProvider() instanceof IPostSelectionProvider provider) {
            provider.removePostSelectionChangedListener(caret);
        }
        super.dispose();
    }
}
