package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import java.util.ArrayList;
import java.util.List;

/**
 * Where is everything that is off?
 *
 * @param bags every bag, in the order of the book
 * @param parts every part that is away
 * @param unbagged joints that are undone and whose fasteners are in no bag
 * @param nextBag the number for the next bag
 */
public record Places(List<Facts.Bag> bags, List<PartPlace> parts, List<String> unbagged, int nextBag) {
    public Places {
        bags = List.copyOf(bags);
        parts = List.copyOf(parts);
        unbagged = List.copyOf(unbagged);
    }

    /** Where a part lies. @param place empty when not said; @param marked empty when it is not */
    public record PartPlace(String part, String place, boolean aside, String marked) {}

    /** The places of a job. */
    public static Places of(Job job) {
        Facts facts = job.facts();
        List<PartPlace> parts = new ArrayList<>();
        facts.stripped()
                .away()
                .forEach((part, place) -> parts.add(new PartPlace(
                        part,
                        place,
                        facts.stripped().aside().contains(part),
                        facts.kept().marked().getOrDefault(part, ""))));
        List<String> unbagged = facts.stripped().open().stream()
                .filter(joint -> job.engine().findJoint(joint).isPresent())
                .filter(joint -> !job.engine().joint(joint).makeup().fasteners().isEmpty())
                .filter(joint -> facts.kept().bags().values().stream()
                        .noneMatch(bag -> bag.joints().containsKey(joint)))
                .toList();
        return new Places(List.copyOf(facts.kept().bags().values()), parts, unbagged, job.nextBag());
    }
}
