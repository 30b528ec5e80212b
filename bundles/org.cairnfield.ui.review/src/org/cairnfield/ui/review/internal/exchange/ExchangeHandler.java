package org.cairnfield.ui.review.internal.exchange;

import java.nio.file.Path;
import java.util.Map;
import java.util.function.BiConsumer;

import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.save.Damaged;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.DialogParent;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Brings verdicts in and out; which way a handler goes stands after the class name in plugin.xml. */
public final class ExchangeHandler extends AbstractHandler implements IExecutableExtension {

	private static final Map<String, BiConsumer<Shell, ReviewDesk>> WAYS = Map.of("CARRY", CarryOverDialog::open,
			"EXPORT",
			ExchangeHandler::export, "IMPORT", ExchangeHandler::takeIn);

	private BiConsumer<Shell, ReviewDesk> way;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		way = WAYS.get(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		ReviewDesk desk = ReviewDesk.workbench();
		if (way == null) {
			return null;
		}
		if (desk.split() == null) {
			desk.review().refuse(Messages.ExchangeHandler_thereIsNoSplitUnder);
		} else {
			way.accept(DialogParent.shell(), desk);
		}
		return null;
	}

	private static void export(Shell shell, ReviewDesk desk) {
		if (!Damaged.isSound(shell, desk.session(), Messages.ExchangeHandler_export)) {
			return;
		}
		String chosen = dialog(shell, SWT.SAVE,
				NLS.bind(Messages.ExchangeHandler_exportVerdictsOfSplit, desk.split().getId()),
				desk.split().getId() + "-verdicts.csv");
		if (chosen != null) {
			desk.exchange().export(Path.of(chosen));
		}
	}

	private static void takeIn(Shell shell, ReviewDesk desk) {
		String readOnly = desk.session().readOnlyReason().orElse(null);
		if (readOnly != null) {
			desk.review().refuse(NLS.bind(Messages.ExchangeHandler_nothingCanBeTakenIn, readOnly));
			return;
		}
		String chosen = dialog(shell, SWT.OPEN,
				NLS.bind(Messages.ExchangeHandler_importVerdictsOnSplit, desk.split().getId()), "");
		if (chosen != null) {
			desk.exchange().takeIn(Path.of(chosen), problems -> new TableProblemsDialog(shell, problems).open());
		}
	}

	private static String dialog(Shell shell, int style, String title, String name) {
		FileDialog dialog = new FileDialog(shell, style);
		dialog.setText(title);
		dialog.setFilterExtensions(new String[] { "*.csv" });
		dialog.setFileName(name);
		dialog.setOverwrite(true);
		return Chooser.open(dialog, "verdicts");
	}
}
