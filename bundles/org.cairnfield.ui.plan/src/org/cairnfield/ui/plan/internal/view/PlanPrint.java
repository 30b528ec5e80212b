package org.cairnfield.ui.plan.internal.view;

import java.util.List;

import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.problem.Problems;
import org.cairnfield.ui.show.Chooser;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** The plan as a picture: in a file, on the clipboard, on paper. */
final class PlanPrint {

	private static final int EDGE = 8;
	private static final String TITLE = Messages.PlanPrint_saveAPictureOfThe;
	private static final String CAUTION = Messages.PlanPrint_notForSafetyOfLife;

	private PlanPrint() {
	}

	/** Controls below each other, under a title, over the caution. */
	static Image picture(Display display, String title, List<Control> controls) {
		int width = controls.stream().mapToInt(control -> Math.max(1, control.getSize().x)).max().orElse(1);
		GC measure = new GC(display);
		int top = measure.textExtent(title).y + 2 * EDGE;
		measure.dispose();
		int height = 2 * top + controls.stream().mapToInt(control -> control.getSize().y).sum();
		Image all = new Image(display, width, height);
		GC gc = new GC(all);
		gc.setBackground(new Color(Palette.PAPER.background()));
		gc.setForeground(new Color(Palette.PAPER.foreground()));
		gc.fillRectangle(0, 0, width, height);
		gc.drawText(title, EDGE, EDGE, true);
		for (Control control : controls) {
			Point size = control.getSize();
			if (size.x > 0 && size.y > 0) {
				Image one = new Image(display, size.x, size.y);
				GC of = new GC(one);
				control.print(of);
				of.dispose();
				gc.drawImage(one, 0, top);
				one.dispose();
				top += size.y;
			}
		}
		gc.drawText(CAUTION, EDGE, top + EDGE, true);
		gc.dispose();
		return all;
	}

	/** To a file that the person names. */
	static void save(PlanPane pane, Shell shell) {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(TITLE);
		dialog.setFilterExtensions(new String[] { "*.png" });
		dialog.setFileName("plan.png");
		dialog.setOverwrite(true);
		String file = Chooser.open(dialog, "picture");
		if (file != null) {
			Image picture = pane.picture();
			try {
				ImageLoader loader = new ImageLoader();
				loader.data = new ImageData[] { picture.getImageData() };
				loader.save(file, SWT.IMAGE_PNG);
			} catch (SWTException e) {
				MessageDialog.openError(shell, TITLE,
						NLS.bind(Messages.PlanPrint_thePictureWasNotSaved, Problems.text(e)));
			} finally {
				picture.dispose();
			}
		}
	}

	static void copy(PlanPane pane, Shell shell) {
		Image picture = pane.picture();
		Clipboard clipboard = new Clipboard(shell.getDisplay());
		clipboard.setContents(new Object[] { picture.getImageData() }, new Transfer[] { ImageTransfer.getInstance() });
		clipboard.dispose();
		picture.dispose();
	}

	/** On a printer that the person chooses, as large as the page allows. */
	static void print(PlanPane pane, Shell shell) {
		PrinterData chosen = new PrintDialog(shell).open();
		if (chosen == null) {
			return;
		}
		Image picture = pane.picture();
		ImageData data = picture.getImageData();
		picture.dispose();
		Printer printer;
		try {
			printer = new Printer(chosen);
		} catch (SWTError e) { // so the toolkit says that it has no such printer
			MessageDialog.openError(shell, Messages.PlanPrint_printThePlan,
					NLS.bind(Messages.PlanPrint_thePrinterCannotBeUsed, e.getMessage()));
			return;
		}
		if (printer.startJob(Messages.PlanPrint_floorPlan)) {
			Image onPaper = new Image(printer, data);
			Rectangle page = printer.getClientArea();
			double scale = Math.min((double) page.width / data.width, (double) page.height / data.height);
			GC gc = new GC(printer);
			printer.startPage();
			gc.drawImage(onPaper, 0, 0, data.width, data.height, page.x, page.y, (int) (scale * data.width),
					(int) (scale * data.height));
			printer.endPage();
			gc.dispose();
			printer.endJob();
			onPaper.dispose();
		}
		printer.dispose();
	}
}
