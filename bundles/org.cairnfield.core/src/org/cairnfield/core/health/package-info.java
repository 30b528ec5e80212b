/** What marks a bad sample, told apart by place and readings, and how well a score finds the bad ones. */
package org.cairnfield.core.health;
