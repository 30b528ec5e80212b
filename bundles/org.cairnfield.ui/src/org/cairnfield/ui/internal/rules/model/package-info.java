/** What the page of the rules shows, and what a person is typing there, without widgets. */
package org.cairnfield.ui.internal.rules.model;
