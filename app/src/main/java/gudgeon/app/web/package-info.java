/**
 * The pages: a server on this machine's own address that renders what the desk answers. One package for each group of pages
 * ({@code engines}, {@code strip}, ...), all on {@code page}; this one puts them together.
 *
 * <p>Pages work without scripts; scripts only add comfort. A handler reads the request, asks the desk, shows a template.
 */
@NullMarked
package gudgeon.app.web;

import org.jspecify.annotations.NullMarked;
