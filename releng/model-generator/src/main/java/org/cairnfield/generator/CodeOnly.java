package org.cairnfield.generator;

import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.util.Monitor;

/** Generates classes and leaves alone what is written by hand: manifests and properties. */
final class CodeOnly extends GenModelGeneratorAdapterFactory {

	static final GeneratorAdapterFactory.Descriptor DESCRIPTOR = CodeOnly::new;

	@Override
	public Adapter createGenModelAdapter() {
		if (genModelGeneratorAdapter == null) {
			genModelGeneratorAdapter = new GenModelGeneratorAdapter(this) {

				@Override
				protected void generateModelPluginProperties(GenModel model, Monitor monitor) {
				}

				@Override
				protected void generateModelBuildProperties(GenModel model, Monitor monitor) {
				}
			};
		}
		return genModelGeneratorAdapter;
	}
}
