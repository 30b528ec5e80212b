package org.cairnfield.curation.release;

import java.util.EnumSet;
import java.util.Set;

import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.exchange.export.ExportFormat;
import org.cairnfield.exchange.export.ExportOptions;
import org.cairnfield.model.SurveyKind;

/**
 * What of an archive is to leave.
 *
 * @param formats       at least one
 * @param kind          training surveys make the map, test surveys measure it
 * @param withSetAside  whether samples and access points that were set aside leave too; a pack never has them
 * @param options       what of it
 * @param pack          what the pack is to be
 */
public record ExportRequest(Set<ExportFormat> formats, SurveyKind kind, boolean withSetAside, ExportOptions options,
		PackRequest pack) {

	/** @throws IllegalArgumentException for no format, and for a pack of test surveys */
	public ExportRequest {
		if (formats.isEmpty()) {
			throw new IllegalArgumentException("name at least one format");
		}
		formats = Set.copyOf(formats);
		if (formats.contains(ExportFormat.PACK) && kind == SurveyKind.TEST) {
			throw new IllegalArgumentException("a device pack is made of training surveys");
		}
	}

	/** Every format of the training map. */
	public static ExportRequest all(ExportOptions options) {
		return new ExportRequest(EnumSet.allOf(ExportFormat.class), SurveyKind.TRAINING, false, options,
				PackRequest.USUAL);
	}
}
