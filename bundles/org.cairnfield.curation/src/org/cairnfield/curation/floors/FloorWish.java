package org.cairnfield.curation.floors;

/**
 * What a person says about plans beyond what their file tells.
 *
 * @param building the building of the file that is the site, or null: the only one, or the one called like the site
 * @param shift    added to ordinals of the file to make levels of the site
 * @param place    whether the file may say where on Earth the site lies, where nobody has said it
 */
public record FloorWish(String building, int shift, boolean place) {

	/** Nothing beyond the file. */
	public static final FloorWish NONE = new FloorWish(null, 0, false);
}
