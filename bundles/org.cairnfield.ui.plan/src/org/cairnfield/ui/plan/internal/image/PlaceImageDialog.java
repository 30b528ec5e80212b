package org.cairnfield.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Function;

import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Floor;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.values.Placement;
import org.cairnfield.ui.charts.scale.ShownNumbers;
import org.cairnfield.ui.plan.internal.image.ControlPoints.Entry;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Asks for an image and for points of it whose place on the floor is known. */
final class PlaceImageDialog extends TitleAreaDialog {

	private final ArchiveSession session;
	private final Floor floor;
	private final ControlPoints points = new ControlPoints();
	private Path file;
	private boolean hasImage;
	private Label name;
	private ImageBoard board;
	private TableViewer table;

	PlaceImageDialog(Shell shell, ArchiveSession session, Floor floor) {
		super(shell);
		this.session = session;
		this.floor = floor;
		setShellStyle(getShellStyle() | SWT.RESIZE | SWT.MAX);
	}

	/** What came of it. */
	Placement placement() {
		return points.placement().orElseThrow();
	}

	/** The file chosen; null where the floor keeps its image. */
	Path file() {
		return file;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.PlaceImageDialog_placeAPlanImage);
		shell.setData("org.cairnfield.id", "plan.placeImage");
	}

	@Override
	protected Point getInitialSize() {
		return new Point(1000, 680);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		GridLayout layout = new GridLayout(2, false);
		layout.marginWidth = 10;
		layout.marginHeight = 10;
		area.setLayout(layout);
		name = new Label(area, SWT.NONE);
		name.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
		Button choose = new Button(area, SWT.PUSH);
		choose.setText(Messages.PlaceImageDialog_chooseAnImageFile);
		choose.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
		choose.addListener(SWT.Selection, event -> choose());
		board = new ImageBoard(area, points, floor.getOutline(), SampleRows.of(floor), this::add);
		board.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		Composite side = new Composite(area, SWT.NONE);
		side.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
		GridLayout sideLayout = new GridLayout(1, false);
		sideLayout.marginHeight = 0;
		sideLayout.marginWidth = 0;
		side.setLayout(sideLayout);
		createTable(side);
		Button remove = new Button(side, SWT.PUSH);
		remove.setText(Messages.PlaceImageDialog_removeThePoint);
		remove.addListener(SWT.Selection, event -> remove());
		setTitle(NLS.bind(Messages.PlaceImageDialog_placeAPlanImageOn, ModelText.name(floor)));
		showPresentImage();
		return area;
	}

	@Override
	protected Control createButtonBar(Composite parent) {
		Control bar = super.createButtonBar(parent);
		getButton(IDialogConstants.OK_ID).setText(Messages.PlaceImageDialog_place);
		changed();
		return bar;
	}

	private void createTable(Composite parent) {
		table = new TableViewer(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		table.getTable().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		table.getTable().setHeaderVisible(true);
		Marked.named(Marked.id(table.getTable(), "plan.controlPoints"), Messages.PlaceImageDialog_pointsOfTheImageAnd);
		table.setContentProvider(ArrayContentProvider.getInstance());
		column(Messages.PlaceImageDialog_point, 50, entry -> Integer.toString(points.entries().indexOf(entry) + 1),
				null);
		column(Messages.PlaceImageDialog_pixel, 110,
				entry -> ShownNumbers.text(entry.column(), 1) + ", " + ShownNumbers.text(entry.row(), 1), null);
		column("x (m)", 75, entry -> text(entry.xMetres()), points::xMetres);
		column("y (m)", 75, entry -> text(entry.yMetres()), points::yMetres);
		column(Messages.PlaceImageDialog_offByM, 80, entry -> ShownNumbers.text(points.residualMetres(entry), 3), null);
		TableViewerEditor.create(table, new ColumnViewerEditorActivationStrategy(table),
				ColumnViewerEditor.TABBING_HORIZONTAL | ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR); // from x to y, then to the next point
		table.setInput(points.entries());
		table.addSelectionChangedListener(
				event -> board.choose((Entry) event.getStructuredSelection().getFirstElement()));
		table.getTable().addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.DEL) {
				remove();
			}
		});
	}

	private void column(String title, int width, Function<Entry, String> text, BiConsumer<Entry, Double> edit) {
		TableViewerColumn column = new TableViewerColumn(table, edit == null ? SWT.NONE : SWT.RIGHT);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object element) {
				return text.apply((Entry) element);
			}
		});
		if (edit != null) {
			column.setEditingSupport(new MetresEditing(table, text, (entry, metres) -> {
				edit.accept(entry, metres);
				changed();
			}));
		}
	}

	private static String text(Double metres) {
		return metres == null ? "" : String.format(Locale.ROOT, "%.2f", metres); // as it is typed
	}

	private void add(double column, double row) {
		Entry entry = points.add(column, row);
		changed();
		table.setSelection(new StructuredSelection(entry), true);
		table.editElement(entry, 2);
	}

	private void remove() {
		Object chosen = table.getStructuredSelection().getFirstElement();
		if (chosen != null) {
			points.remove((Entry) chosen);
			changed();
		}
	}

	private void changed() {
		table.refresh();
		board.redraw();
		setMessage(points.message());
		Button ok = getButton(IDialogConstants.OK_ID);
		if (ok != null) {
			ok.setEnabled(hasImage && points.placement().isPresent() && session.readOnlyReason().isEmpty());
		}
		session.readOnlyReason()
				.ifPresent(reason -> setErrorMessage(NLS.bind(Messages.PlaceImageDialog_nothingCanBeChanged, reason)));
	}

	private void showPresentImage() {
		name.setText(Messages.PlaceImageDialog_theFloorHasNoPlan);
		if (floor.getPlanImage() != null) {
			try {
				show(session.open().resolve(floor.getPlanImage()),
						NLS.bind(Messages.PlaceImageDialog_theImageItHas, floor.getPlanImage()));
			} catch (IOException e) {
				setErrorMessage(NLS.bind(Messages.PlaceImageDialog_theImageItHasCannot, e.getMessage()));
			}
		}
	}

	private void choose() {
		FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
		dialog.setText(NLS.bind(Messages.PlaceImageDialog_chooseAnImageOf, ModelText.name(floor)));
		dialog.setFilterExtensions(new String[] { "*.png;*.jpg;*.jpeg;*.gif;*.bmp;*.tif;*.tiff;*.svg", "*" });
		dialog.setFilterNames(new String[] { Messages.PlaceImageDialog_images, Messages.PlaceImageDialog_allFiles });
		String chosen = Chooser.open(dialog, "plan-image");
		if (chosen != null && show(Path.of(chosen), chosen)) {
			file = Path.of(chosen);
			points.clear();
			changed();
		}
	}

	private boolean show(Path image, String text) {
		try {
			board.show(new Image(getShell().getDisplay(), image.toString()));
			name.setText(text);
			hasImage = true;
			setErrorMessage(null);
			return true;
		} catch (SWTException e) {
			setErrorMessage(NLS.bind(Messages.PlaceImageDialog_noImageThatCanBe, image.getFileName(), e.getMessage()));
			return false;
		}
	}
}
