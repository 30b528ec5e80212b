package org.cairnfield.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.genmodel.GenJDKLevel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.GenPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/**
 * Writes the code of the model. Arguments: the folder of the model bundle, and an output folder. Exit code 1 when the generator
 * reports a problem.
 */
public final class GenerateModel {

	private GenerateModel() {
	}

	public static void main(String[] args) throws IOException {
		place("source", args[0]);
		place("model", args[1]);
		GenModelPackage.eINSTANCE.eClass();
		ResourceSet resources = new ResourceSetImpl();
		resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("*", new EcoreResourceFactoryImpl());
		resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
		EPackage root = (EPackage) resources.getResource(uri("source/model/cairnfield.ecore"), true).getContents()
				.get(0);

		GenModel model = GenModelFactory.eINSTANCE.createGenModel();
		resources.createResource(uri("source/model/cairnfield.genmodel")).getContents().add(model);
		model.initialize(List.of(root));
		configure(model);
		Documentation.require(root);
		Diagnostic valid = model.diagnose();
		fail(valid.getSeverity() < Diagnostic.ERROR ? Diagnostic.OK_INSTANCE : valid);

		Generator generator = new Generator();
		generator.getAdapterFactoryDescriptorRegistry().addDescriptor(GenModelPackage.eNS_URI, CodeOnly.DESCRIPTOR);
		generator.setInput(model);
		fail(generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()));
		Files.deleteIfExists(Path.of(args[1], "plugin.xml"));
	}

	private static void configure(GenModel model) {
		model.setModelName("Model");
		model.setModelPluginID("org.cairnfield.model");
		model.setModelDirectory("/model");
		model.setComplianceLevel(GenJDKLevel.JDK170_LITERAL);
		model.setBundleManifest(false);
		model.setUpdateClasspath(false);
		model.setCanGenerate(true);
		model.setSuppressGenModelAnnotations(true);
		// fewer bytes an object, and containment that may cross files where the model says so
		model.setRootExtendsClass("org.eclipse.emf.ecore.impl.MinimalEObjectImpl$Container");
		model.setContainmentProxies(true);
		model.setOperationReflection(false);
		model.setMinimalReflectiveMethods(true);
		GenPackage genPackage = model.getGenPackages().get(0);
		genPackage.setBasePackage("org.cairnfield");
		genPackage.setPrefix("Model");
	}

	private static void place(String name, String folder) {
		EcorePlugin.getPlatformResourceMap().put(name,
				URI.createFileURI(Path.of(folder).toAbsolutePath().normalize() + "/"));
	}

	private static URI uri(String path) {
		return URI.createPlatformResourceURI(path, false);
	}

	private static void fail(Diagnostic result) {
		if (result.getSeverity() != Diagnostic.OK) {
			System.err.println(result);
			result.getChildren().forEach(System.err::println);
			System.exit(1);
		}
	}
}
