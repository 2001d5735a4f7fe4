package gudgeon.app.web.photos;

import gudgeon.app.web.jobs.HowItWas;
import gudgeon.app.web.page.Form;

/**
 * What the page that takes a photo shows.
 *
 * @param entry names the entry that the form makes
 * @param subject what the photo is about, in words; empty for the job as a whole
 * @param path where the form is sent
 * @param back where one came from
 * @param was photos and words about it so far
 */
public record PhotoView(Form form, String entry, String subject, String path, String back, HowItWas was) {}
