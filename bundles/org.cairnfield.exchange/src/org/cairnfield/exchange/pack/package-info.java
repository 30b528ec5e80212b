/** The device pack: a split map for small devices, described byte by byte in docs/device-pack.md, and a reader without dependencies. */
package org.cairnfield.exchange.pack;
