package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import java.util.List;

/**
 * The engine has a joint that its file lacks. Three fields are enough.
 *
 * @param name what it is called
 * @param between the parts it joins, ids or names, parted by commas, "to" or "and"
 * @param fasteners as a mechanic writes them: 4 x M8x25; or a kind of joint without fasteners: slide
 * @param tighten stages as a manual writes them: 30 N·m, 90°, oiled; may be empty
 */
public record JointAdded(String name, String between, String fasteners, String tighten) implements Deed {
    @Override
    public Telling tell(Job job) {
        FileCorrection correction = new FileCorrection(job);
        if (name.isBlank()) {
            correction.refuse(FieldProblem.of("name", FieldProblem.Kind.EMPTY, ""));
        }
        correction.refuseAll(Checks.name("name", name));
        List<String> parts = between.isBlank() ? List.of() : correction.parts("between", between);
        if (parts.size() < 2 && !correction.hasProblem("between")) {
            correction.refuse(FieldProblem.of("between", FieldProblem.Kind.TWO_PARTS, Checks.shortened(between)));
        }
        String yaml = correction.fasteners(fasteners);
        String stages = correction.tighten(tighten);
        if (correction.isSound()) {
            correction.put(
                    "joints/" + correction.freeId(name),
                    yaml(name, parts, yaml) + (stages.isEmpty() ? "" : "tighten: " + stages + "\n"));
        }
        return correction.tell();
    }

    static String yaml(String name, List<String> parts, String fasteners) {
        return "name: " + EngineText.quoted(name.strip()) + "\nbetween: [" + String.join(", ", parts) + "]\n"
                + fasteners;
    }
}
