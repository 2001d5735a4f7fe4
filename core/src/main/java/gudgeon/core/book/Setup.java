package gudgeon.core.book;

import java.util.List;

/** What the job is, on which engine, with which means, to which end; and when somebody is at it. */
public sealed interface Setup extends Body {
    /**
     * The job begins.
     *
     * @param name what the owner calls it
     * @param like id of the shipped engine it started from; empty when from a file of the owner's
     */
    record JobOpened(String name, String like) implements Setup {
        public JobOpened {
            Said.something(name, "a job's name");
        }
    }

    /**
     * What the person has and how they reckon; a later one replaces an earlier one.
     *
     * @param with ways of lifting by name, beside their own arms
     * @param worthPerHour what an hour is worth in the currency of the prices; 0 leaves money out
     * @param units metric or inch, for showing
     * @param toolbox whose toolbox; empty when not said
     */
    record Settings(List<String> with, double worthPerHour, String units, String toolbox) implements Setup {
        public Settings {
            with = List.copyOf(with);
            if (!(worthPerHour >= 0)) {
                throw new IllegalArgumentException("an hour is worth 0 or more, not " + worthPerHour);
            }
        }
    }

    /**
     * The engine file, whole, as it was taken on.
     *
     * @param text the file
     * @param sha256 hash of its bytes in UTF-8, lower-case hexadecimal
     */
    record EngineAdopted(String text, String sha256) implements Setup {}

    /**
     * The engine file is put right in places, each by itself, so that two phones do not overwrite each other.
     *
     * @param patches in order
     */
    record EngineCorrected(List<Patch> patches) implements Setup {
        public EngineCorrected {
            patches = List.copyOf(patches);
            if (patches.isEmpty()) {
                throw new IllegalArgumentException("a correction corrects something");
            }
        }
    }

    /**
     * One place of the engine file.
     *
     * @param path keys from the top, joined by slashes: {@code joints/pump-bolts/fasteners}
     * @param old what stood there, as YAML; empty when nothing did
     * @param now what stands there now, as YAML; empty when it is taken out
     */
    record Patch(String path, String old, String now) {
        public Patch {
            Said.something(path, "the path of a patch");
        }
    }

    /**
     * What is to be reached; a later one replaces an earlier one.
     *
     * @param off parts to be off
     * @param aside parts to be moved
     * @param open joints to be undone
     * @param measure features to be reachable
     */
    record TargetSet(List<String> off, List<String> aside, List<String> open, List<String> measure) implements Setup {
        public static final TargetSet NOTHING = new TargetSet(List.of(), List.of(), List.of(), List.of());

        public TargetSet {
            off = List.copyOf(off);
            aside = List.copyOf(aside);
            open = List.copyOf(open);
            measure = List.copyOf(measure);
        }

        /** Whether nothing is to be reached. */
        public boolean isEmpty() {
            return off.isEmpty() && aside.isEmpty() && open.isEmpty() && measure.isEmpty();
        }
    }

    /** A joint will not come: it is cut where the file has a way, or gone round. */
    record WillNotCome(String joint) implements Setup {}

    /** A joint that would not come does. */
    record ComesAfterAll(String joint) implements Setup {}

    /** Somebody starts to work. */
    record SessionStarted(String session) implements Setup {}

    /**
     * Somebody stops working.
     *
     * @param safe whether it was left so that nothing can fall, leak or be forgotten
     * @param left what is left as it is; may be empty
     */
    record SessionEnded(String session, boolean safe, String left) implements Setup {}

    /** A feature's typical limit was looked up and holds. */
    record LimitConfirmed(String feature, String where) implements Setup {}

    /**
     * Where the work is done, for the daylight there; a later one replaces an earlier one. A tenth of a degree is kept: some ten
     * kilometres, enough for the sun, and no address.
     *
     * @param latitude degrees, north positive
     * @param longitude degrees, east positive
     * @param outdoors whether work ends with the light
     */
    record PlaceSet(double latitude, double longitude, boolean outdoors) implements Setup {
        public PlaceSet {
            if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) {
                throw new IllegalArgumentException("a place lies between 90 and -90 degrees north and 180 and -180 degrees east, not at "
                        + latitude + ", " + longitude);
            }
            latitude = Math.rint(latitude * 10) / 10;
            longitude = Math.rint(longitude * 10) / 10;
        }
    }
}
