package org.cantonment.workbench.opening;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks for a folder of books and opens it. */
public final class OpenHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        DirectoryDialog dialog = new DirectoryDialog(HandlerUtil.getActiveShellChecked(event), SWT.OPEN);
        dialog.setText("Open a campaign folder");
        dialog.setMessage("The folder that holds the campaign's books. They stay where they are.");
        String folder = dialog.open();
        if (folder != null) {
            Opening.begin(folder);
        }
        return null;
    }
}
