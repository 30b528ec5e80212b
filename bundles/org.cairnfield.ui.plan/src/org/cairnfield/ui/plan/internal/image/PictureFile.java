package org.cairnfield.ui.plan.internal.image;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

import org.cairnfield.model.values.Placement;
import org.cairnfield.ui.plan.internal.raster.PlanPicture;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;

/** Reads plan images of any format that SWT knows. Works on any thread. */
public final class PictureFile {

	private PictureFile() {
	}

	/** @throws IOException also where the file is no image */
	public static PlanPicture read(Path file, Placement placement) throws IOException {
		try (InputStream in = Files.newInputStream(file)) {
			ImageData data = new ImageData(in);
			return new PlanPicture(data.width, data.height, pixels(data), placement);
		} catch (SWTException e) {
			throw new IOException(NLS.bind(Messages.PictureFile_noImageThatCanBe, file.getFileName(), e.getMessage()),
					e);
		}
	}

	/** Row by row as 0xRRGGBB, what shines through on white. */
	private static int[] pixels(ImageData data) {
		int[] pixels = new int[data.width * data.height];
		int[] row = new int[data.width];
		boolean alpha = data.alphaData != null;
		for (int r = 0; r < data.height; r++) {
			data.getPixels(0, r, data.width, row, 0);
			for (int c = 0; c < data.width; c++) {
				int rgb = rgb(data, row[c]);
				pixels[r * data.width + c] = alpha ? onWhite(rgb, data.alphaData[r * data.width + c] & 0xff) : rgb;
			}
		}
		return pixels;
	}

	private static int rgb(ImageData data, int pixel) {
		if (data.palette.isDirect) {
			return shifted(pixel & data.palette.redMask, data.palette.redShift) << 16
					| shifted(pixel & data.palette.greenMask, data.palette.greenShift) << 8
					| shifted(pixel & data.palette.blueMask, data.palette.blueShift);
		}
		RGB rgb = data.palette.getRGB(pixel);
		return rgb.red << 16 | rgb.green << 8 | rgb.blue;
	}

	private static int shifted(int bits, int shift) {
		return shift < 0 ? bits >>> -shift : bits << shift;
	}

	private static int onWhite(int rgb, int alpha) {
		int result = 0;
		for (int shift = 0; shift <= 16; shift += 8) {
			int channel = rgb >> shift & 0xff;
			result |= (channel * alpha + 255 * (255 - alpha)) / 255 << shift;
		}
		return result;
	}
}
