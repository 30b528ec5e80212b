/**
 * A robot that wanders through the workbench: random, seeded actions of all three roles with real mouse and keys, in a
 * workbench of its own that is now and then killed and started again.
 */
package org.cairnfield.ui.tests.wander;
