package org.cairnfield.ui.internal.app;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/** The menus that the platform leaves to the product; all commands of our own come through plugin.xml. */
final class ActionBars extends ActionBarAdvisor {

	ActionBars(IActionBarConfigurer configurer) {
		super(configurer);
	}

	@Override
	protected void makeActions(IWorkbenchWindow window) {
		register(ActionFactory.QUIT.create(window));
		register(ActionFactory.ABOUT.create(window));
		register(ActionFactory.PREFERENCES.create(window));
		register(ActionFactory.RESET_PERSPECTIVE.create(window));
		register(ActionFactory.SHOW_VIEW_MENU.create(window));
		register(ActionFactory.NEXT_PART.create(window));
		register(ActionFactory.PREVIOUS_PART.create(window));
		register(ActionFactory.MAXIMIZE.create(window));
	}

	@Override
	protected void fillStatusLine(IStatusLineManager line) {
		line.add(new FindingCounts());
		line.add(new PersonItem());
	}

	@Override
	protected void fillMenuBar(IMenuManager bar) {
		IWorkbenchWindow window = getActionBarConfigurer().getWindowConfigurer().getWindow();
		MenuManager file = new MenuManager(Messages.ActionBars_archive, IWorkbenchActionConstants.M_FILE);
		file.add(new GroupMarker("open"));
		file.add(new Separator("take"));
		file.add(new Separator("save"));
		file.add(new Separator("exchange"));
		file.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		file.add(new Separator());
		file.add(getAction(ActionFactory.QUIT.getId()));
		MenuManager edit = new MenuManager(Messages.ActionBars_edit, IWorkbenchActionConstants.M_EDIT);
		edit.add(new GroupMarker("undo"));
		edit.add(new Separator("samples"));
		edit.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
		MenuManager view = new MenuManager(Messages.ActionBars_window, IWorkbenchActionConstants.M_WINDOW);
		MenuManager parts = new MenuManager(Messages.ActionBars_showView, "showView");
		parts.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
		view.add(parts);
		view.add(getAction(ActionFactory.RESET_PERSPECTIVE.getId()));
		view.add(new Separator());
		view.add(getAction(ActionFactory.MAXIMIZE.getId()));
		view.add(getAction(ActionFactory.NEXT_PART.getId()));
		view.add(getAction(ActionFactory.PREVIOUS_PART.getId()));
		view.add(new Separator());
		view.add(getAction(ActionFactory.PREFERENCES.getId()));
		MenuManager help = new MenuManager(Messages.ActionBars_help, IWorkbenchActionConstants.M_HELP);
		help.add(new GroupMarker("learn"));
		help.add(getAction(ActionFactory.ABOUT.getId()));
		bar.add(file);
		bar.add(edit);
		bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		bar.add(view);
		bar.add(help);
	}
}
