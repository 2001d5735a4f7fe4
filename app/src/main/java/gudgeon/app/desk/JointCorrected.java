package gudgeon.app.desk;

import gudgeon.app.format.EngineText;
import java.util.List;
import java.util.stream.Stream;

/**
 * A joint is not as the file says. Empty fields stay as they are.
 *
 * @param joint id or name
 * @param name what it is called
 * @param between the parts it joins
 * @param fasteners as a mechanic writes them
 * @param tighten stages as a manual writes them: 30 N·m, 90°, oiled
 */
public record JointCorrected(String joint, String name, String between, String fasteners, String tighten)
        implements Deed {
    @Override
    public Telling tell(Job job) {
        NameSearch names = new NameSearch(job.engine());
        List<String> ids = names.joints(List.of(joint));
        FileCorrection correction = new FileCorrection(job);
        correction.refuseAll(Checks.unknown("joint", names));
        correction.refuseAll(Checks.name("name", name));
        if (!correction.isSound()) {
            return correction.tell();
        }
        String path = "joints/" + ids.getFirst();
        if (EngineText.at(job.ownEngine().text(), path).isEmpty()) {
            // one of several copies that the file writes once
            return Telling.wrong(FieldProblem.of("joint", FieldProblem.Kind.TAKEN, ids.getFirst()));
        }
        if (!name.isBlank()) {
            correction.put(path + "/name", EngineText.quoted(name.strip()));
        }
        if (!between.isBlank()) {
            List<String> parts = correction.parts("between", between);
            if (correction.isSound() && parts.size() < 2) {
                correction.refuse(FieldProblem.of("between", FieldProblem.Kind.TWO_PARTS, between));
            }
            correction.put(path + "/between", "[" + String.join(", ", parts) + "]");
        }
        if (!fasteners.isBlank()) {
            String yaml = correction.fasteners(fasteners);
            if (yaml.startsWith("fasteners:\n")) {
                correction.put(path + "/fasteners", yaml.substring("fasteners:\n".length()));
            } else if (correction.isSound()) {
                correction.put(path + "/kind", yaml.substring("kind: ".length()).strip());
            }
        }
        if (!tighten.isBlank()) {
            correction.put(path + "/tighten", correction.tighten(tighten));
        }
        if (correction.isSound() && Stream.of(name, between, fasteners, tighten).allMatch(String::isBlank)) {
            return Telling.wrong(FieldProblem.of("name", FieldProblem.Kind.EMPTY, ""));
        }
        return correction.tell();
    }
}
