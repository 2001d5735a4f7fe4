package gudgeon.core.engine;

/** What a circuit carries, and whether opening it is left to licensed practice. */
public enum CircuitKind {
    COOLANT("coolant", false),
    OIL("oil", false),
    FUEL("fuel", false),
    FUEL_HIGH_PRESSURE("high-pressure fuel", false),
    FLUID("fluid", false),
    AIR("air", false),
    EXHAUST("exhaust", false),
    VACUUM("vacuum", false),
    ELECTRIC("electric", false),
    REFRIGERANT("refrigerant", true),
    HIGH_VOLTAGE("high voltage", true),
    AIRBAG("airbag", true);

    private final String word;
    private final boolean licensed;

    CircuitKind(String word, boolean licensed) {
        this.word = word;
        this.licensed = licensed;
    }

    public String word() {
        return word;
    }

    public boolean licensed() {
        return licensed;
    }
}
