package gudgeon.core.book;

/**
 * Something an entry is about.
 *
 * @param sort what sort of thing
 * @param id its id in the engine file, or what is written on the bag
 */
public record Ref(Sort sort, String id) {
    public Ref {
        if (id.isBlank()) {
            throw new IllegalArgumentException("a reference names something");
        }
    }

    /** Sorts of thing. */
    public enum Sort {
        PART,
        /** The thing that sits in a part's place: "piston#2" is the second piston in the place piston. */
        ITEM,
        JOINT,
        FASTENER,
        READY,
        CIRCUIT,
        FEATURE,
        BAG,
        PLACE,
        OPENING
    }

    public static Ref part(String id) {
        return new Ref(Sort.PART, id);
    }

    public static Ref joint(String id) {
        return new Ref(Sort.JOINT, id);
    }
}
