package gudgeon.app.desk;

import gudgeon.app.format.QuantityKind;
import gudgeon.app.format.TypedQuantity;
import gudgeon.core.bolting.Adaptor;
import gudgeon.core.bolting.Wrench;
import java.util.List;
import java.util.Optional;

/**
 * Which torque wrench, and what to set on it.
 *
 * @param torque wanted at the fastener, as written
 * @param wrenches each "name: 5-25 N·m"
 * @param adaptor offset, wrench length and, if it is not in line, angle; none without an adaptor
 */
public record WrenchQuestion(String torque, List<String> wrenches, List<String> adaptor) {
    public WrenchQuestion {
        wrenches = List.copyOf(wrenches);
        adaptor = List.copyOf(adaptor);
    }

    /**
     * The answer.
     *
     * @param torque as typed
     * @param adaptor between wrench and fastener, if there is one
     * @param setting_Nm what to set
     */
    public record Answer(TypedQuantity torque, Optional<Adaptor> adaptor, double setting_Nm, Wrench.Choice choice) {}

    /** Asks. @throws IllegalArgumentException when something cannot be read */
    public Answer ask(Written written) {
        TypedQuantity wanted = written.torque("torque", torque);
        Optional<Adaptor> between = adaptor(written);
        double setting_Nm = between.map(each -> each.setting(wanted.value())).orElse(wanted.value());
        List<Wrench> read = wrenches.stream().map(each -> wrench(each, written)).toList();
        return new Answer(wanted, between, setting_Nm, Wrench.choose(setting_Nm, read));
    }

    private Optional<Adaptor> adaptor(Written written) {
        if (adaptor.isEmpty()) {
            return Optional.empty();
        }
        if (adaptor.size() < 2 || adaptor.size() > 3) {
            throw new IllegalArgumentException(
                    "adaptor: say its offset and the length of the wrench, like \"50 mm, 400 mm\", and an angle if it is not in line");
        }
        return Optional.of(new Adaptor(
                written.length_mm("wrench length", adaptor.get(1)),
                written.length_mm("adaptor", adaptor.get(0)),
                adaptor.size() == 3
                        ? written.quantity("angle", adaptor.get(2), QuantityKind.ANGLE)
                                .value()
                        : 0));
    }

    static Wrench wrench(String text, Written written) {
        int colon = text.lastIndexOf(':');
        String name = colon < 0 ? text.strip() : text.substring(0, colon).strip();
        TypedQuantity.Span span =
                TypedQuantity.readSpan("wrench", text.substring(colon + 1), QuantityKind.TORQUE, written.comma());
        return new Wrench(name, span.least().value(), span.most().value());
    }
}
