package org.cairnfield.curation.edit;

import static java.util.Map.entry;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.ModelPackage.Literals;
import org.cairnfield.model.edit.FieldCommand;
import org.cairnfield.model.edit.ModelText;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * A value of an object of an archive that a person may change. It is read and typed as text; an empty text unsets it. What other values
 * follow from, such as an id or an address, is no field; nor is what is measured, such as how a device is corrected in the map.
 */
public final class Editable {

	private static final Map<EClass, List<EStructuralFeature>> FIELDS = Map.ofEntries(
			entry(Literals.ARCHIVE, List.of(Literals.ARCHIVE__NAME, Literals.ARCHIVE__SITE_ORDER)),
			entry(Literals.SITE,
					List.of(Literals.SITE__NAME, Literals.SITE__GEOREFERENCE, Literals.SITE__MAP_FROM,
							Literals.SITE__MAP_UNTIL)),
			entry(Literals.FLOOR,
					List.of(Literals.FLOOR__NAME, Literals.FLOOR__OUTLINE, Literals.FLOOR__HEIGHT_METRES)),
			entry(Literals.ACCESS_POINT,
					List.of(Literals.ACCESS_POINT__BAND, Literals.ACCESS_POINT__CHANNEL, Literals.ACCESS_POINT__GROUP,
							Literals.ACCESS_POINT__PLACE)),
			entry(Literals.DEVICE, List.of(Literals.DEVICE__NAME, Literals.DEVICE__OFFSET_DB)),
			entry(Literals.SURVEY,
					List.of(Literals.SURVEY__NAME, Literals.SURVEY__DATE, Literals.SURVEY__KIND,
							Literals.SURVEY__DEVICE,
							Literals.SURVEY__SURVEYOR, Literals.SURVEY__PROTOCOL)));

	private final EObject object;
	private final EStructuralFeature feature;
	private final EditableText text;

	private Editable(EObject object, EStructuralFeature feature) {
		this.object = object;
		this.feature = feature;
		text = new EditableText(object, feature);
	}

	/** The fields of an object, in the order in which they are shown; empty for what cannot be changed. */
	public static List<Editable> of(EObject object) {
		return FIELDS.getOrDefault(object.eClass(), List.of()).stream().map(feature -> new Editable(object, feature))
				.toList();
	}

	/** The field of one feature; empty where it cannot be changed. */
	public static Optional<Editable> of(EObject object, EStructuralFeature feature) {
		return of(object).stream().filter(field -> field.feature == feature).findFirst();
	}

	/** As commands name it, such as {@code height-metres}. */
	public String name() {
		return feature.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
	}

	/** The present value; empty where it is not set. */
	public String text() {
		return text.of(object.eGet(feature));
	}

	/** The texts that it can have; empty where many more can be typed. */
	public List<String> choices() {
		return text.choices();
	}

	/** Gives it a value without a command, where nothing is to be undone. @throws UnfitValueException as {@link #change} */
	public void set(String typed) {
		change(typed).execute();
	}

	/**
	 * The command that gives it a value. It cannot be executed where it has that value already.
	 *
	 * @param typed empty to unset it
	 * @throws UnfitValueException where it cannot have that value
	 */
	public Command change(String typed) {
		Object value = text.parse(typed.strip());
		if (!Objects.equals(value, object.eGet(feature))) {
			EditableRules.require(object, feature, value);
		}
		String change = Words.bind(Messages.Editable_changeTheOf, name().replace('-', ' '), ModelText.name(object));
		return new FieldCommand(List.of(object), feature, value) {
			@Override
			protected String label(int changing) {
				return change;
			}
		};
	}
}
