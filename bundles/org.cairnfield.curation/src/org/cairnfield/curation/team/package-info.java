/** Work that several people share: who reviews which proposals, how far each has come, and what they say to each other. */
package org.cairnfield.curation.team;
