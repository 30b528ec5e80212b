package org.cairnfield.ui.internal.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.cairnfield.exchange.IntakeException;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.show.Chooser;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.swt.IFocusService;

/**
 * Gives each table and tree of ours, as soon as it has a size, the columns that the person chose and an end of its context menu
 * with what can be done with any table. The samples, of which only those in sight are in their table, have their own.
 */
public final class TableTools {

	/** What the handlers of the commands are active for. */
	private static final String FOCUS_ID = "org.cairnfield.ui.table";
	private static final String ID = "org.cairnfield.id";
	private static final String PREPARED = "org.cairnfield.table.prepared";
	private static final String TRACKED = "org.cairnfield.table.tracked";
	private static final String SAMPLES = "samples.table";
	/** Its lines say more when the pointer rests on them, and must not be covered while they are judged. */
	private static final String QUEUE = "review.queue";

	private TableTools() {
	}

	/** From now on, whichever window or dialog a table is in. */
	public static void install(Display display) {
		display.addFilter(SWT.Resize, event -> once(event, PREPARED, control -> display.asyncExec(() -> { // when it has its columns
			if (!control.isDisposed() && isOurs(control)) {
				prepare(control);
			}
		})));
		display.addFilter(SWT.FocusIn, event -> once(event, TRACKED, control -> { // before it hears of its focus itself
			if (isOurs(control)) {
				PlatformUI.getWorkbench().getService(IFocusService.class).addFocusTracker(control, FOCUS_ID);
			}
		}));
	}

	private static void once(Event event, String done, Consumer<Control> action) {
		if ((event.widget instanceof Table || event.widget instanceof Tree) && event.widget.getData(done) == null) {
			event.widget.setData(done, Boolean.TRUE);
			action.accept((Control) event.widget);
		}
	}

	private static boolean isOurs(Control control) {
		return control.getData(ID) instanceof String id && !id.equals(SAMPLES);
	}

	private static void prepare(Control control) {
		if (!control.getData(ID).equals(QUEUE)) {
			new CutText(control);
		}
		ColumnChoice columns = new ColumnChoice(control, (String) control.getData(ID));
		columns.restore();
		if (control.getMenu() == null) {
			control.setMenu(new Menu(control));
		}
		Menu menu = control.getMenu();
		List<MenuItem> ours = new ArrayList<>();
		menu.addListener(SWT.Show, event -> {
			ours.forEach(MenuItem::dispose);
			ours.clear();
			if (menu.getItemCount() > 0) {
				ours.add(new MenuItem(menu, SWT.SEPARATOR));
			}
			ours.add(item(menu, NLS.bind(Messages.TableTools_copy, key()), () -> copy(control)));
			ours.add(item(menu, Messages.TableTools_saveTheTableAsCsv, () -> save(control)));
			columns.menu(menu).ifPresent(ours::add);
		});
	}

	private static String key() {
		String key = PlatformUI.getWorkbench().getService(IBindingService.class)
				.getBestActiveBindingFormattedFor(IWorkbenchCommandConstants.EDIT_COPY);
		return key == null ? "" : '\t' + key;
	}

	private static MenuItem item(Menu menu, String text, Runnable action) {
		MenuItem item = new MenuItem(menu, SWT.PUSH);
		item.setText(text);
		item.addListener(SWT.Selection, event -> action.run());
		return item;
	}

	/** The lines selected, or all where none is. */
	static void copy(Control table) {
		TableText selected = TableText.of(table, true);
		String text = (selected.rows().isEmpty() ? TableText.of(table, false) : selected).withTabs();
		if (!text.isEmpty()) {
			Clipboard clipboard = new Clipboard(table.getDisplay());
			clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
			clipboard.dispose();
		}
	}

	/** All lines, to a file that the person names. */
	static void save(Control table) {
		FileDialog dialog = new FileDialog(table.getShell(), SWT.SAVE);
		dialog.setText(Messages.TableTools_saveTheTableAsCsv2);
		dialog.setFilterExtensions(new String[] { "*.csv" });
		dialog.setFileName(String.valueOf(table.getData(ID)).replaceAll("\\.(table|tree)$", "") + ".csv");
		dialog.setOverwrite(true);
		String chosen = Chooser.open(dialog, "table");
		if (chosen != null) {
			try {
				TableText.of(table, false).write(Path.of(chosen));
			} catch (IntakeException e) {
				MessageDialog.openError(table.getShell(), Messages.TableTools_theTableWasNotSaved, Problems.text(e));
			}
		}
	}
}
