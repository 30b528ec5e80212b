package org.cairnfield.ui.internal.open;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.actions.CompoundContributionItem;

/** The archives that were open before, in a menu. */
public final class RecentMenu extends CompoundContributionItem {

	@Override
	protected IContributionItem[] getContributionItems() {
		List<Path> recent = RecentArchives.all();
		if (recent.isEmpty()) {
			Action none = new Action(Messages.RecentMenu_noArchiveHasBeenOpened) {
			};
			none.setEnabled(false);
			return new IContributionItem[] { new ActionContributionItem(none) };
		}
		return recent.stream().map(RecentMenu::entry).toArray(IContributionItem[]::new);
	}

	private static IContributionItem entry(Path folder) {
		Action open = new Action(folder.toString().replace("&", "&&").replace("@", "@@")) {
			@Override
			public void run() {
				Opening.open(folder);
			}
		};
		return new ActionContributionItem(open);
	}
}
