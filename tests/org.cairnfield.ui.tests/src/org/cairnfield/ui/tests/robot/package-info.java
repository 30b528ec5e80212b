/** A small robot that uses the workbench as a person does: it finds widgets, clicks, types, and waits. */
package org.cairnfield.ui.tests.robot;
