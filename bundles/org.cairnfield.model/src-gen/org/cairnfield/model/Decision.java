/**
 */
package org.cairnfield.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Decision</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Where a noise sample goes.
 * <!-- end-model-doc -->
 * @see org.cairnfield.model.ModelPackage#getDecision()
 * @model
 * @generated
 */
public enum Decision implements Enumerator {
	/**
	 * The '<em><b>DEFER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Somebody decides later.
	 * <!-- end-model-doc -->
	 * @see #DEFER_VALUE
	 * @generated
	 * @ordered
	 */
	DEFER(0, "DEFER", "defer"),

	/**
	 * The '<em><b>APPROVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Into the cluster that is proposed.
	 * <!-- end-model-doc -->
	 * @see #APPROVE_VALUE
	 * @generated
	 * @ordered
	 */
	APPROVE(1, "APPROVE", "approve"),

	/**
	 * The '<em><b>REJECT</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Out of the map, though it is kept in its survey. Only older ledgers and tables say so.
	 * <!-- end-model-doc -->
	 * @see #REJECT_VALUE
	 * @generated
	 * @ordered
	 */
	REJECT(2, "REJECT", "reject"),

	/**
	 * The '<em><b>MOVE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Into another cluster.
	 * <!-- end-model-doc -->
	 * @see #MOVE_VALUE
	 * @generated
	 * @ordered
	 */
	MOVE(3, "MOVE", "move"),

	/**
	 * The '<em><b>POOL</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Into the pool, which every query searches.
	 * <!-- end-model-doc -->
	 * @see #POOL_VALUE
	 * @generated
	 * @ordered
	 */
	POOL(4, "POOL", "pool"),

	/**
	 * The '<em><b>FAULTY</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Out of the map, and set aside in its survey.
	 * <!-- end-model-doc -->
	 * @see #FAULTY_VALUE
	 * @generated
	 * @ordered
	 */
	FAULTY(5, "FAULTY", "faulty");

	/**
	 * The '<em><b>DEFER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Somebody decides later.
	 * <!-- end-model-doc -->
	 * @see #DEFER
	 * @model literal="defer"
	 * @generated
	 * @ordered
	 */
	public static final int DEFER_VALUE = 0;

	/**
	 * The '<em><b>APPROVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Into the cluster that is proposed.
	 * <!-- end-model-doc -->
	 * @see #APPROVE
	 * @model literal="approve"
	 * @generated
	 * @ordered
	 */
	public static final int APPROVE_VALUE = 1;

	/**
	 * The '<em><b>REJECT</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Out of the map, though it is kept in its survey. Only older ledgers and tables say so.
	 * <!-- end-model-doc -->
	 * @see #REJECT
	 * @model literal="reject"
	 * @generated
	 * @ordered
	 */
	public static final int REJECT_VALUE = 2;

	/**
	 * The '<em><b>MOVE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Into another cluster.
	 * <!-- end-model-doc -->
	 * @see #MOVE
	 * @model literal="move"
	 * @generated
	 * @ordered
	 */
	public static final int MOVE_VALUE = 3;

	/**
	 * The '<em><b>POOL</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Into the pool, which every query searches.
	 * <!-- end-model-doc -->
	 * @see #POOL
	 * @model literal="pool"
	 * @generated
	 * @ordered
	 */
	public static final int POOL_VALUE = 4;

	/**
	 * The '<em><b>FAULTY</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Out of the map, and set aside in its survey.
	 * <!-- end-model-doc -->
	 * @see #FAULTY
	 * @model literal="faulty"
	 * @generated
	 * @ordered
	 */
	public static final int FAULTY_VALUE = 5;

	/**
	 * An array of all the '<em><b>Decision</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Decision[] VALUES_ARRAY =
		new Decision[] {
			DEFER,
			APPROVE,
			REJECT,
			MOVE,
			POOL,
			FAULTY,
		};

	/**
	 * A public read-only list of all the '<em><b>Decision</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Decision> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Decision</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Decision get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Decision result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Decision</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Decision getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			Decision result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Decision</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Decision get(int value) {
		switch (value) {
			case DEFER_VALUE: return DEFER;
			case APPROVE_VALUE: return APPROVE;
			case REJECT_VALUE: return REJECT;
			case MOVE_VALUE: return MOVE;
			case POOL_VALUE: return POOL;
			case FAULTY_VALUE: return FAULTY;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private Decision(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //Decision
