package org.cairnfield.generator;

import java.util.Set;

import org.eclipse.emf.codegen.ecore.genmodel.GenClass;
import org.eclipse.emf.codegen.ecore.genmodel.GenFeature;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenPropertyKind;

/** What the properties view lets people change: nothing that names a file, was computed, or belongs to the record. */
final class Properties {

	private static final Set<String> RECORDS = Set.of("Split", "Cluster", "Ledger", "Verdict", "Waiver");
	private static final Set<String> FIXED = Set.of("id", "formatVersion", "sourceFile", "sourceDigest");

	private Properties() {
	}

	static void restrict(GenModel model) {
		for (GenClass genClass : model.getGenPackages().get(0).getGenClasses()) {
			for (GenFeature feature : genClass.getGenFeatures()) {
				if (feature.getName().equals("table")) {
					feature.setProperty(GenPropertyKind.NONE_LITERAL);
				} else if (RECORDS.contains(genClass.getName()) || FIXED.contains(feature.getName())) {
					feature.setProperty(feature.isContains() ? GenPropertyKind.NONE_LITERAL : GenPropertyKind.READONLY_LITERAL);
				}
				// the samples of a survey are rows of a table and not nodes of a tree
				if (feature.getName().equals("samples")) {
					feature.setChildren(false);
				}
			}
		}
	}
}
