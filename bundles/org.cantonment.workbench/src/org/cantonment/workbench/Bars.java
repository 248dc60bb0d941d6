package org.cantonment.workbench;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/** Menus and tool bar. What is our own hangs in them by plugin.xml. */
final class Bars extends ActionBarAdvisor {

    private IWorkbenchWindow window;

    Bars(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow ofWindow) {
        window = ofWindow;
    }

    @Override
    protected void fillMenuBar(IMenuManager bar) {
        bar.add(fileMenu());
        bar.add(editMenu());
        bar.add(navigateMenu());
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        bar.add(windowMenu());
        bar.add(helpMenu());
    }

    private IMenuManager fileMenu() {
        MenuManager menu = new MenuManager("&File", IWorkbenchActionConstants.M_FILE);
        MenuManager made = new MenuManager("&New", "org.cantonment.workbench.new");
        made.add(ContributionItemFactory.NEW_WIZARD_SHORTLIST.create(window));
        menu.add(made);
        menu.add(new GroupMarker(IWorkbenchActionConstants.NEW_EXT));
        menu.add(new Separator());
        add(menu, ActionFactory.CLOSE, ActionFactory.CLOSE_ALL);
        menu.add(new Separator());
        add(menu, ActionFactory.SAVE, ActionFactory.SAVE_AS, ActionFactory.SAVE_ALL, ActionFactory.REVERT);
        menu.add(new Separator());
        add(menu, ActionFactory.RENAME, ActionFactory.REFRESH, ActionFactory.PRINT);
        menu.add(new Separator());
        add(menu, ActionFactory.IMPORT, ActionFactory.EXPORT);
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(ContributionItemFactory.REOPEN_EDITORS.create(window));
        menu.add(new Separator());
        add(menu, ActionFactory.QUIT);
        return menu;
    }

    /** The marks are where the text editor hangs its own entries in. */
    private IMenuManager editMenu() {
        MenuManager menu = new MenuManager("&Edit", IWorkbenchActionConstants.M_EDIT);
        menu.add(new GroupMarker(IWorkbenchActionConstants.EDIT_START));
        add(menu, ActionFactory.UNDO, ActionFactory.REDO);
        menu.add(new GroupMarker(IWorkbenchActionConstants.UNDO_EXT));
        menu.add(new Separator());
        add(menu, ActionFactory.CUT, ActionFactory.COPY, ActionFactory.PASTE);
        menu.add(new GroupMarker(IWorkbenchActionConstants.CUT_EXT));
        menu.add(new Separator());
        add(menu, ActionFactory.DELETE, ActionFactory.SELECT_ALL);
        menu.add(new Separator());
        add(menu, ActionFactory.FIND);
        menu.add(new GroupMarker(IWorkbenchActionConstants.FIND_EXT));
        menu.add(new Separator());
        menu.add(new GroupMarker(IWorkbenchActionConstants.ADD_EXT));
        menu.add(new GroupMarker(IWorkbenchActionConstants.EDIT_END));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        return menu;
    }

    private IMenuManager navigateMenu() {
        MenuManager menu = new MenuManager("&Navigate", IWorkbenchActionConstants.M_NAVIGATE);
        menu.add(new GroupMarker(IWorkbenchActionConstants.NAV_START));
        menu.add(new GroupMarker(IWorkbenchActionConstants.OPEN_EXT));
        menu.add(new GroupMarker(IWorkbenchActionConstants.SHOW_EXT));
        menu.add(new Separator());
        add(menu, ActionFactory.NEXT, ActionFactory.PREVIOUS);
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker(IWorkbenchActionConstants.NAV_END));
        menu.add(new Separator());
        add(menu, ActionFactory.BACKWARD_HISTORY, ActionFactory.FORWARD_HISTORY);
        return menu;
    }

    private IMenuManager windowMenu() {
        MenuManager menu = new MenuManager("&Window", IWorkbenchActionConstants.M_WINDOW);
        MenuManager views = new MenuManager("Show &view");
        views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
        menu.add(views);
        add(menu, ActionFactory.RESET_PERSPECTIVE);
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new Separator());
        add(menu, ActionFactory.PREFERENCES);
        return menu;
    }

    private IMenuManager helpMenu() {
        MenuManager menu = new MenuManager("&Help", IWorkbenchActionConstants.M_HELP);
        menu.add(new GroupMarker(IWorkbenchActionConstants.HELP_START));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menu.add(new GroupMarker("group.updates"));
        menu.add(new Separator());
        add(menu, ActionFactory.ABOUT);
        return menu;
    }

    private void add(IMenuManager menu, ActionFactory... factories) {
        for (ActionFactory factory : factories) {
            ActionFactory.IWorkbenchAction action = factory.create(window);
            register(action);
            menu.add(action);
        }
    }

    @Override
    protected void fillCoolBar(ICoolBarManager bar) {
        ToolBarManager file = new ToolBarManager(SWT.FLAT | SWT.RIGHT);
        for (ActionFactory factory : new ActionFactory[] { ActionFactory.SAVE, ActionFactory.SAVE_ALL }) {
            ActionFactory.IWorkbenchAction action = factory.create(window);
            register(action);
            file.add(action);
        }
        bar.add(new ToolBarContributionItem(file, IWorkbenchActionConstants.TOOLBAR_FILE));
        bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }
}
