package gudgeon.app.desk;

import gudgeon.core.book.Body;
import gudgeon.core.book.Ref;
import java.util.List;

/**
 * Something a person says happened at a job, in their words. {@link Workshop#note} checks it and writes it down.
 */
public interface Deed {
    /** What it comes to at this job, as it stands. */
    Telling tell(Job job);

    /** What a deed comes to. */
    sealed interface Telling {
        /** Facts for the book, one stroke. */
        record Facts(List<Body> bodies, List<Ref> about) implements Telling {
            public Facts {
                bodies = List.copyOf(bodies);
                about = List.copyOf(about);
            }
        }

        /** It makes no sense at this job. */
        record Wrong(List<FieldProblem> problems) implements Telling {
            public Wrong {
                problems = List.copyOf(problems);
            }
        }

        /** Facts about nothing but what they name. */
        static Telling facts(Body... bodies) {
            return new Facts(List.of(bodies), List.of());
        }

        static Telling wrong(FieldProblem... problems) {
            return new Wrong(List.of(problems));
        }
    }
}
