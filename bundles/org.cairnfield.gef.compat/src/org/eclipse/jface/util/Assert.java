package org.eclipse.jface.util;

/**
 * What GEF 3.2 calls and JFace no longer has: the checks that it once had. In a fragment of GEF, so
 * that no other bundle can come to depend on it.
 */
public final class Assert {

	private Assert() {
	}

	public static boolean isLegal(boolean holds) {
		return isLegal(holds, "");
	}

	/** @throws IllegalArgumentException unless it holds */
	public static boolean isLegal(boolean holds, String otherwise) {
		if (!holds) {
			throw new IllegalArgumentException(otherwise);
		}
		return true;
	}

	public static void isNotNull(Object object) {
		isNotNull(object, "");
	}

	/** @throws IllegalStateException for null */
	public static void isNotNull(Object object, String otherwise) {
		isTrue(object != null, otherwise);
	}

	public static boolean isTrue(boolean holds) {
		return isTrue(holds, "");
	}

	/** @throws IllegalStateException unless it holds */
	public static boolean isTrue(boolean holds, String otherwise) {
		if (!holds) {
			throw new IllegalStateException(otherwise);
		}
		return true;
	}
}
