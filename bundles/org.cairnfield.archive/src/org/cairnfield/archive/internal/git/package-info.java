/** The history of an archive as a Git repository. The only package that knows JGit, and knows nothing of what files hold. */
package org.cairnfield.archive.internal.git;
