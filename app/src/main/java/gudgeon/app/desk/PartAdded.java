package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import java.util.List;

/**
 * The engine has a part that its file lacks. Since every part is held by something, it comes with its joint.
 *
 * @param name what it is called
 * @param mass with its unit: 0.4 kg; empty when not known
 * @param joinedTo the part or parts it sits on
 * @param fasteners what holds it there
 */
public record PartAdded(String name, String mass, String joinedTo, String fasteners) implements Deed {
    @Override
    public Telling tell(Job job) {
        FileCorrection correction = new FileCorrection(job);
        if (name.isBlank()) {
            correction.refuse(FieldProblem.of("name", FieldProblem.Kind.EMPTY, ""));
        }
        correction.refuseAll(Checks.name("name", name));
        correction.refuseAll(Checks.name("mass", mass));
        List<String> parts = joinedTo.isBlank() ? List.of() : correction.parts("between", joinedTo);
        if (parts.isEmpty() && !correction.hasProblem("between")) {
            correction.refuse(FieldProblem.of("between", FieldProblem.Kind.EMPTY, ""));
        }
        String yaml = correction.fasteners(fasteners);
        if (correction.isSound()) {
            String id = correction.freeId(name);
            List<String> all = new java.util.ArrayList<>(List.of(id));
            all.addAll(parts);
            String weighs = mass.isBlank() ? "" : "\nmass: " + EngineText.quoted(mass.strip());
            correction.put("parts/" + id, "name: " + EngineText.quoted(name.strip()) + weighs + "\n");
            correction.put(
                    "joints/" + correction.freeId(name + " fixing"),
                    JointAdded.yaml(
                            name.strip() + " to "
                                    + job.engine().part(parts.getFirst()).name(),
                            all,
                            yaml));
        }
        return correction.tell();
    }
}
