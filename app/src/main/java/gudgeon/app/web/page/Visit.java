package gudgeon.app.web.page;

/**
 * What a page takes from the request that it answers.
 *
 * @param look the colours chosen
 * @param token goes into every form, as the field {@value Gate#FIELD}
 * @param here path and query of the request, to come back to
 * @param assets path before the name of every static file
 */
public record Visit(Look look, String token, String here, String assets) {}
