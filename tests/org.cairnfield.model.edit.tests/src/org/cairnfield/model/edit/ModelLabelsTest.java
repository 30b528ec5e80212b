package org.cairnfield.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cairnfield.model.Device;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.ModelPackage;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.eclipse.emf.edit.provider.ITreeItemContentProvider;
import org.eclipse.emf.edit.provider.IViewerNotification;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

public class ModelLabelsTest {

	private final ModelLabels labels = new ModelLabels();
	private final Surveys surveys = new Surveys();

	@AfterEach
	public void dispose() {
		labels.dispose();
	}

	private static List<EObject> oneOfEach() {
		List<EObject> objects = new ArrayList<>();
		for (EClassifier classifier : ModelPackage.eINSTANCE.getEClassifiers()) {
			if (classifier instanceof EClass type) {
				objects.add(ModelFactory.eINSTANCE.create(type));
			}
		}
		return objects;
	}

	private String text(EObject object) {
		return ((IItemLabelProvider) labels.adapt((Object) object, IItemLabelProvider.class)).getText(object);
	}

	@Test
	public void countSamples() {
		assertEquals("Tide House (6 samples)", text(surveys.site));
		assertEquals("Floor 0 (4 samples)", text(surveys.ground));
		assertEquals("th-spring (3 samples)", text(surveys.spring));
		SetFloorCommand lift = new SetFloorCommand(Surveys.all(surveys.spring), 1);
		assertTrue(lift.canExecute());
		lift.execute();
		assertEquals("Floor 0 (2 samples)", text(surveys.ground));
	}

	@Test
	public void sayWhatIsSetAside() {
		surveys.archive.getAccessPoints().get(0).setReason("gone");
		assertEquals("ap1, set aside", text(surveys.archive.getAccessPoints().get(0)));
	}

	@Test
	public void giveEveryClassATextAndAnIconOfTwoSizes() throws Exception {
		Set<URL> icons = new HashSet<>();
		for (EObject object : oneOfEach()) {
			IItemLabelProvider label = (IItemLabelProvider) labels.adapt((Object) object, IItemLabelProvider.class);
			assertNotNull(label.getText(object));
			URL icon = (URL) label.getImage(object);
			assertNotNull(icon, object.eClass()::getName);
			icons.add(icon);
			assertEquals(16, width(icon));
			assertEquals(32, width(new URL(icon.toString().replace(".png", "@2x.png"))));
		}
		assertEquals(oneOfEach().size(), icons.size(), "each has its own");
	}

	/** Of a PNG: bytes 16 to 19 by ISO/IEC 15948. */
	private static int width(URL png) throws Exception {
		try (InputStream in = png.openStream()) {
			byte[] head = in.readNBytes(20);
			return (head[16] & 0xff) << 24 | (head[17] & 0xff) << 16 | (head[18] & 0xff) << 8 | head[19] & 0xff;
		}
	}

	@Test
	public void nameAndDescribeEveryProperty() {
		for (EObject object : oneOfEach()) {
			IItemPropertySource source = (IItemPropertySource) labels.adapt((Object) object, IItemPropertySource.class);
			for (IItemPropertyDescriptor descriptor : source.getPropertyDescriptors(object)) {
				assertFalse(descriptor.getDisplayName(object).isBlank());
				assertTrue(descriptor.getDescription(object).endsWith("."), descriptor.getDescription(object));
			}
		}
	}

	@Test
	public void tellUnits() {
		assertEquals("RSSI offset (dB)", property(ModelFactory.eINSTANCE.createDevice(), "offsetDb").getDisplayName(null));
		assertEquals("Storey height (m)", property(surveys.ground, "heightMetres").getDisplayName(null));
	}

	@Test
	public void letNobodyChangeWhatNamesAFileOrBelongsToTheRecord() {
		Device device = ModelFactory.eINSTANCE.createDevice();
		assertTrue(property(device, "name").canSetProperty(device));
		assertFalse(property(device, "id").canSetProperty(device));
		EObject verdict = ModelFactory.eINSTANCE.createVerdict();
		assertFalse(property(verdict, "decision").canSetProperty(verdict));
	}

	private IItemPropertyDescriptor property(EObject object, String name) {
		IItemPropertySource source = (IItemPropertySource) labels.adapt((Object) object, IItemPropertySource.class);
		return source.getPropertyDescriptors(object).stream()
				.filter(d -> d.getFeature(object) == object.eClass().getEStructuralFeature(name)).findFirst().orElseThrow();
	}

	@Test
	public void showFloorsAndSurveysBelowASite() {
		ITreeItemContentProvider tree = (ITreeItemContentProvider) labels.adapt((Object) surveys.site,
				ITreeItemContentProvider.class);
		List<EObject> expected = new ArrayList<>(surveys.site.getFloors());
		expected.addAll(List.of(surveys.spring, surveys.autumn));
		assertEquals(expected, List.copyOf(tree.getChildren(surveys.site)));
		ITreeItemContentProvider survey = (ITreeItemContentProvider) labels.adapt((Object) surveys.spring,
				ITreeItemContentProvider.class);
		assertFalse(survey.hasChildren(surveys.spring), "samples are rows, not nodes");
	}

	@Test
	public void tellTheViewsWhoseCountsChange() {
		for (EObject shown : List.of(surveys.site, surveys.ground, surveys.spring, surveys.spring.getSamples())) {
			labels.adapt((Object) shown, IItemLabelProvider.class);
		}
		Set<Object> refreshed = new HashSet<>();
		labels.addListener(notification -> refreshed.add(((IViewerNotification) notification).getElement()));
		surveys.spring.getSamples().setTable(surveys.spring.table().edit().floorLevel(0, 1).done());
		assertTrue(refreshed.containsAll(Set.of(surveys.site, surveys.ground, surveys.spring)), refreshed::toString);
	}
}
