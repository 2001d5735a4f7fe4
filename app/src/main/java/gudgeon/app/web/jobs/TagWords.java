package gudgeon.app.web.jobs;

import gudgeon.app.desk.Watch;
import gudgeon.app.document.Names;

/** What stands on a tag that hangs on the key. */
public final class TagWords {
    private TagWords() {}

    /** In capitals on the tag; here as a sentence. */
    public static String of(Watch.Tag tag, Names names) {
        String about = names.any(tag.about());
        return switch (tag.sort()) {
            case NO_OIL -> "No oil: do not start. " + about;
            case NO_COOLANT -> "No coolant: do not start. " + about;
            case NO_FLUID -> "Empty: " + about;
            case FUEL_OPEN -> "Fuel open: no flame, no starter. " + about;
            case PINS_IN -> "Pins in: do not turn. " + about;
            case TORQUE_HALF_DONE -> "Half tightened: " + about;
            case SUPPORTED -> "On a support, do not move: " + about;
            case AID_FITTED -> "Fitted for the work, take off before starting: " + tag.about();
        };
    }
}
