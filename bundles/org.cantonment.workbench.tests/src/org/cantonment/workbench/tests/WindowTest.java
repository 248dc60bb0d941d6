package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

/** The window that opens first. */
class WindowTest {

    @Test
    void opensOnTheCampaign() {
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        assertEquals("org.cantonment.workbench.perspective", page.getPerspective().getId());
        assertNotNull(page.findView(IPageLayout.ID_PROJECT_EXPLORER));
    }
}
