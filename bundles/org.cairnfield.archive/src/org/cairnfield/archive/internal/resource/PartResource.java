package org.cairnfield.archive.internal.resource;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;

import org.cairnfield.archive.internal.text.PartReport;
import org.cairnfield.archive.internal.text.LedgerText;
import org.cairnfield.archive.internal.text.Migrations;
import org.cairnfield.archive.internal.text.SamplesText;
import org.cairnfield.archive.internal.text.SplitText;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;

/** A file of lines: the samples of a survey, a split, or a ledger. It has one root. */
public final class PartResource extends ResourceImpl {

	private PartReport report;
	private Migrations migrations = Migrations.NONE;

	PartResource(URI uri) {
		super(uri);
	}

	/** One that holds what was read from elsewhere. */
	static PartResource of(URI uri, EObject root) {
		PartResource resource = new PartResource(uri);
		resource.getContents().add(root);
		return resource;
	}

	/** Reads the file; what is wrong with it is in the report, and its root is what could be read. */
	void read(InputStream in, Migrations from, PartReport to) throws IOException {
		report = to;
		migrations = from;
		load(in, null);
		report = null;
	}

	@Override
	protected void doLoad(InputStream in, Map<?, ?> options) throws IOException {
		PartReport to = report == null ? new PartReport(String.valueOf(uri)) : report;
		switch (String.valueOf(uri.fileExtension())) {
		case "samples" -> {
			Samples samples = ModelFactory.eINSTANCE.createSamples();
			samples.setTable(SamplesText.read(in, migrations, to));
			getContents().add(samples);
		}
		case "split" -> getContents().add(SplitText.read(in, migrations, to));
		case "ledger" -> getContents().add(LedgerText.read(in, migrations, to));
		default -> throw new IOException(Words.bind(Messages.PartResource_noFileOfAnArchive, uri));
		}
	}

	@Override
	protected void doSave(OutputStream out, Map<?, ?> options) throws IOException {
		write(getContents().get(0), out);
	}

	/** Writes what belongs in a file of lines. */
	static void write(EObject root, OutputStream out) throws IOException {
		if (root instanceof Samples samples) {
			SamplesText.write(samples.getTable() == null ? SampleTable.EMPTY : samples.getTable(), out);
		} else if (root instanceof Split split) {
			SplitText.write(split, out);
		} else if (root instanceof Ledger ledger) {
			LedgerText.write(ledger, out);
		} else {
			throw new IOException(Words.bind(Messages.PartResource_noRootOfAFile, root));
		}
	}
}
