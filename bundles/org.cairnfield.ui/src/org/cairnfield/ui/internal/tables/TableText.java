package org.cairnfield.ui.internal.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/**
 * What a table shows, as text: the columns in sight that have a title, in their order. Of a tree the lines that are unfolded, each set off by two
 * spaces a level.
 *
 * @param header titles; none where there are no columns
 * @param rows   as many fields as there are columns in sight
 */
record TableText(List<String> header, List<List<String>> rows) {

	private static final String INDENT = "  ";

	/** @param selected whether the lines selected alone */
	static TableText of(Control control, boolean selected) {
		return control instanceof Tree tree ? of(tree, selected) : of((Table) control, selected);
	}

	private static TableText of(Table table, boolean selected) {
		int[] columns = Arrays.stream(table.getColumnOrder())
				.filter(c -> isText(table.getColumn(c), table.getColumn(c).getWidth())).toArray();
		int[] asked = columns.length == 0 ? new int[1] : columns;
		List<String> header = Arrays.stream(columns).mapToObj(table::getColumn).map(TableColumn::getText).toList();
		IntStream lines = selected ? Arrays.stream(table.getSelectionIndices()).sorted()
				: IntStream.range(0, table.getItemCount());
		return new TableText(header, lines.mapToObj(line -> fields(table.getItem(line), asked)).toList());
	}

	/** Columns without a title hold pictures. */
	private static boolean isText(Item column, int width) {
		return width > 0 && !column.getText().isEmpty();
	}

	private static List<String> fields(TableItem item, int[] columns) {
		return Arrays.stream(columns).mapToObj(item::getText).toList();
	}

	private static TableText of(Tree tree, boolean selected) {
		int[] columns = Arrays.stream(tree.getColumnOrder())
				.filter(c -> isText(tree.getColumn(c), tree.getColumn(c).getWidth())).toArray();
		int[] asked = columns.length == 0 ? new int[1] : columns;
		List<String> header = Arrays.stream(columns).mapToObj(tree::getColumn).map(TreeColumn::getText).toList();
		List<TreeItem> chosen = selected ? Arrays.asList(tree.getSelection()) : null;
		List<List<String>> rows = new ArrayList<>();
		for (TreeItem item : tree.getItems()) {
			add(item, 0, asked, chosen, rows);
		}
		return new TableText(header, rows);
	}

	/** @param chosen null for all */
	private static void add(TreeItem item, int depth, int[] columns, List<TreeItem> chosen, List<List<String>> rows) {
		if (chosen == null || chosen.contains(item)) {
			rows.add(IntStream.range(0, columns.length)
					.mapToObj(i -> (i == 0 && chosen == null ? INDENT.repeat(depth) : "") + item.getText(columns[i]))
					.toList());
		}
		if (item.getExpanded()) {
			for (TreeItem child : item.getItems()) {
				add(child, depth + 1, columns, chosen, rows);
			}
		}
	}

	/** For a spreadsheet or a message: fields parted by tabs, with the titles where there are several lines. */
	String withTabs() {
		Stream<List<String>> lines = rows.size() > 1 && !header.isEmpty()
				? Stream.concat(Stream.of(header), rows.stream())
				: rows.stream();
		return lines.map(line -> line.stream().map(TableText::oneLine).collect(Collectors.joining("\t")))
				.collect(Collectors.joining("\n"));
	}

	private static String oneLine(String field) {
		return field.replaceAll("[\\t\\r\\n]+", " ");
	}

	/** As comma-separated values. @throws IntakeException where the file cannot be written */
	void write(Path file) throws IntakeException {
		ResultTable.write(file, header.isEmpty() ? List.of("line") : header, rows.stream().map(row -> row));
	}
}
