package org.cairnfield.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.emf.codegen.ecore.genmodel.GenClass;
import org.eclipse.emf.codegen.ecore.genmodel.GenEnum;
import org.eclipse.emf.codegen.ecore.genmodel.GenEnumLiteral;
import org.eclipse.emf.codegen.ecore.genmodel.GenFeature;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenPackage;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The texts that the properties view shows, from the labels and the documentation in the model. */
final class Words {

	private static final String SOURCE = "urn:org.cairnfield:words";

	private Words() {
	}

	/** Makes the documentation of a feature the description of its property; whatever has no documentation is an error. */
	static void describe(GenModel model) {
		for (GenPackage genPackage : model.getGenPackages()) {
			genPackage.getEcorePackage().getEClassifiers().forEach(Words::documentation);
			for (GenClass genClass : genPackage.getGenClasses()) {
				for (GenFeature feature : genClass.getGenFeatures()) {
					feature.setPropertyDescription(documentation(feature.getEcoreFeature()));
				}
			}
		}
	}

	/** Writes the properties file, sorted, in plain ASCII. */
	static void write(GenModel model, Path file) throws IOException {
		Map<String, String> texts = new TreeMap<>();
		texts.put("pluginName", "Cairnfield model: labels and commands");
		texts.put("_UI_Unknown_type", "Object");
		texts.put("_UI_Unknown_datatype", "Value");
		texts.put("_UI_Unknown_feature", "Unspecified");
		texts.put("_UI_PropertyDescriptor_description", "{0} of {1}");
		for (GenPackage genPackage : model.getGenPackages()) {
			for (GenClass genClass : genPackage.getGenClasses()) {
				texts.put("_UI_" + genClass.getName() + "_type", label(genClass.getEcoreClass(), genClass.getName()));
				for (GenFeature feature : genClass.getGenFeatures()) {
					String key = "_UI_" + genClass.getName() + '_' + feature.getName();
					texts.put(key + "_feature", label(feature.getEcoreFeature(), feature.getName()));
					texts.put(key + "_description", documentation(feature.getEcoreFeature()));
				}
			}
			for (GenEnum genEnum : genPackage.getGenEnums()) {
				for (GenEnumLiteral literal : genEnum.getGenEnumLiterals()) {
					texts.put("_UI_" + genEnum.getName() + '_' + literal.getName() + "_literal", literal.getLiteral());
				}
			}
		}
		StringBuilder lines = new StringBuilder("# Generated from model/cairnfield.ecore of org.cairnfield.model.\n");
		texts.forEach((key, text) -> lines.append(key).append(" = ").append(escaped(text)).append('\n'));
		Files.writeString(file, lines);
	}

	private static String label(EModelElement element, String otherwise) {
		String label = EcoreUtil.getAnnotation(element, SOURCE, "label");
		return label == null ? otherwise : label;
	}

	private static String documentation(ENamedElement element) {
		String documentation = EcoreUtil.getDocumentation(element);
		if (documentation == null || documentation.isBlank()) {
			throw new IllegalStateException(element.getName() + " has no documentation");
		}
		return documentation.strip();
	}

	private static String escaped(String text) {
		StringBuilder ascii = new StringBuilder();
		text.chars().forEach(c -> ascii.append(c < 0x7f ? String.valueOf((char) c) : String.format("\\u%04X", c)));
		return ascii.toString();
	}
}
