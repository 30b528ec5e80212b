/** Archives that several people work on: where they meet, and what an exchange has brought. */
package org.cairnfield.archive.remote;
