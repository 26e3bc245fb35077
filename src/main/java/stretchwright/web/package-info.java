/**
 * WEB - the page door on the loopback address: a form, the results, the files.
 *
 * <p>In: HTTP requests. Out: pages and downloads. Promise: the same results as the command. Read first: Server.
 */
@NullMarked
package stretchwright.web;

import org.jspecify.annotations.NullMarked;
