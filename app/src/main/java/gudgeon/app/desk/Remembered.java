package gudgeon.app.desk;

import gudgeon.core.book.Facts;
import gudgeon.core.book.JobState;
import gudgeon.core.book.Ref;
import gudgeon.core.book.Strip;
import gudgeon.core.book.Word;
import gudgeon.core.engine.Joint;
import gudgeon.core.planning.BuildPlan;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a person wrote down and photographed about a joint or parts, for whoever puts them back.
 *
 * @param pieces fasteners as found, where each sat
 * @param words how it differs from the file, how it runs, notes; as written, in this order
 * @param photos in the order of the book
 */
public record Remembered(List<Strip.Piece> pieces, List<String> words, List<JobPhotos.Shot> photos) {
    public Remembered {
        pieces = List.copyOf(pieces);
        words = List.copyOf(words);
        photos = List.copyOf(photos);
    }

    /** A joint, with what bends in it; or a preparation. */
    public static Remembered joint(Job job, String id) {
        Set<String> ids = new LinkedHashSet<>();
        ids.add(id);
        job.engine().findJoint(id).ifPresent(joint -> ids.addAll(bending(joint)));
        List<String> words = new ArrayList<>();
        Facts.FoundJoint found = job.facts().findings().joints().get(id);
        if (found != null && !found.differs().isEmpty()) {
            words.add(found.differs());
        }
        words.addAll(routings(job, ids));
        words.addAll(notes(job, ids));
        return new Remembered(found == null ? List.of() : found.pieces(), words, JobPhotos.about(job, ids));
    }

    /** Parts, as one piece. */
    public static Remembered parts(Job job, List<String> ids) {
        List<String> words = new ArrayList<>(routings(job, ids));
        words.addAll(notes(job, ids));
        return new Remembered(List.of(), words, JobPhotos.about(job, ids));
    }

    /** What is of use at a step of the way back. */
    public static Remembered step(Job job, BuildPlan.Operation step) {
        return step.kind() == BuildPlan.Kind.PLACE
                ? parts(job, step.subject().parts())
                : joint(job, step.subject().ref());
    }

    /** The same as lines of a list, where each joint is told at its first step only; empty at the later ones. */
    public static Remembered inList(Job job, BuildPlan.Operation step) {
        return switch (step.kind()) {
            case PLACE, SNUG, RESTORE -> step(job, step);
            case SEAL, STAGE, ANGLE, TIGHTEN, CHECK, FILL, BLEED, WAIT ->
                new Remembered(List.of(), List.of(), List.of());
        };
    }

    private static List<String> bending(Joint joint) {
        return joint.flexible() ? List.of(joint.between().getFirst()) : List.of();
    }

    private static List<String> routings(Job job, Collection<String> ids) {
        return ids.stream()
                .flatMap(id -> job.facts().findings().routings().getOrDefault(id, List.of()).stream())
                .toList();
    }

    /** Notes about at least one of them; those that were taken back are left out. */
    private static List<String> notes(Job job, Collection<String> ids) {
        List<String> notes = new ArrayList<>();
        for (JobState.Told told : job.state().history()) {
            if (told.counts()
                    && told.entry().body() instanceof Word.Note(String text)
                    && told.entry().about().stream().map(Ref::id).anyMatch(ids::contains)) {
                notes.add(text);
            }
        }
        return notes;
    }
}
