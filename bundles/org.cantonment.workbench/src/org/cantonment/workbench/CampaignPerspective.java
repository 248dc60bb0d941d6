package org.cantonment.workbench;

import org.cantonment.workbench.adopting.AdoptingView;
import org.cantonment.workbench.author.CheckWizard;
import org.cantonment.workbench.eras.ErasView;
import org.cantonment.workbench.fielding.ReachView;
import org.cantonment.workbench.fielding.TurnoutView;
import org.cantonment.workbench.findings.FindingsView;
import org.cantonment.workbench.shopping.BuyingView;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** Books on the left, the text in the middle, its outline on the right, what was found below. */
public final class CampaignPerspective implements IPerspectiveFactory {

    /** The id of the perspective. */
    public static final String ID = "org.cantonment.workbench.perspective";

    private static final float LEFT_SHARE = 0.2f;
    private static final float TOP_SHARE = 0.66f;
    private static final float MIDDLE_SHARE = 0.7f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editors = layout.getEditorArea();
        layout.addView(IPageLayout.ID_PROJECT_EXPLORER, IPageLayout.LEFT, LEFT_SHARE, editors);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, TOP_SHARE, editors);
        below.addView(FindingsView.ID);
        below.addView(ErasView.ID);
        below.addView(TurnoutView.ID);
        below.addView(ReachView.ID);
        below.addView(BuyingView.ID);
        below.addPlaceholder(AdoptingView.ID);
        below.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
        below.addPlaceholder("org.eclipse.search.ui.views.SearchView");
        layout.addView(IPageLayout.ID_OUTLINE, IPageLayout.RIGHT, MIDDLE_SHARE, editors);
        layout.addShowViewShortcut(FindingsView.ID);
        layout.addShowViewShortcut(ErasView.ID);
        layout.addShowViewShortcut(TurnoutView.ID);
        layout.addShowViewShortcut(ReachView.ID);
        layout.addShowViewShortcut(BuyingView.ID);
        layout.addShowViewShortcut(AdoptingView.ID);
        layout.addShowViewShortcut(IPageLayout.ID_PROJECT_EXPLORER);
        layout.addShowViewShortcut(IPageLayout.ID_OUTLINE);
        layout.addNewWizardShortcut(CheckWizard.ID);
        layout.addNewWizardShortcut("org.eclipse.ui.wizards.new.folder");
        layout.addNewWizardShortcut("org.eclipse.ui.wizards.new.file");
    }
}
