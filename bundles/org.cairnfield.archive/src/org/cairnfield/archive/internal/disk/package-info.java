/**
 * Files that survive a crash: written beside, synced, renamed; several at once through a journal. And the lock that keeps
 * a second writer out. Knows nothing of what the files hold.
 */
package org.cairnfield.archive.internal.disk;
