/**
 * Photos made fit to be kept: read, turned upright, made no larger than is needed, and written anew, so that nothing of what a
 * camera writes beside the picture (the place, the time, the camera's number) is left.
 *
 * <p>Knows neither jobs nor books nor files. The orientation a camera notes is that of the Exif standard. Source: [EXIF] tag 0x0112.
 */
@NullMarked
package gudgeon.app.photo;

import org.jspecify.annotations.NullMarked;
