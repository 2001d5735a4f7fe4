package gudgeon.core.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known, for one engine: which faults it can have, and what they do to its cylinders. Two slices: faults of more than one
 * cylinder (none, one or two of them), and given those every cylinder by itself (sound, or one fault; or two when the first slice
 * has none).
 */
public final class EngineModel {
    private static final long SPREAD = 0x9E3779B97F4A7C15L; // odd, so that different keys stay different

    private final Knowledge knowledge;
    private final EngineFacts facts;
    private final Gauges gauges;
    private final HealthyGrid grid;
    private final List<Fault> faults = new ArrayList<>();
    private final List<List<Body>> bodies = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<Condition> numbered = new ArrayList<>(List.of(Condition.HEALTHY));
    private final Map<Long, Expected> expected = new HashMap<>();
    private final List<FindingKind> cylinderFindings;
    private final double[] alarms;
    private final double[][] passes;
    private final double[][] memberPasses;

    /** A way a cylinder may be with one fault: its share and what it is like; numbered from 1. */
    record Body(double share, Condition condition, int number) {}

    /** The model of an engine. */
    public EngineModel(Knowledge knowledge, EngineFacts facts) {
        this.knowledge = knowledge;
        this.facts = facts;
        gauges = new Gauges(knowledge.physics(), facts);
        grid = HealthyGrid.of(facts, knowledge.physics().compression(), facts.has().contains("decompressor"));
        for (Fault fault : knowledge.faults().values()) {
            if (facts.fits(fault.needs())) {
                add(fault);
            }
        }
        cylinderFindings = knowledge.findings().values().stream()
                .filter(finding -> finding.at() == Place.CYLINDER && finding.heard().isEmpty())
                .toList();
        alarms = cylinderFindings.stream().mapToDouble(FindingKind::falseAlarm).toArray();
        passes = passes(faults);
        memberPasses = passes(members.stream().map(Member::fault).toList());
    }

    private double[][] passes(List<Fault> raisers) {
        double[][] all = new double[cylinderFindings.size()][];
        for (int f = 0; f < all.length; f++) {
            FindingKind finding = cylinderFindings.get(f);
            all[f] = raisers.stream().mapToDouble(fault -> 1 - strength(finding, fault)).toArray();
        }
        return all;
    }

    /** Chance that a fault alone raises a finding on this engine. */
    double strength(FindingKind finding, Fault fault) {
        FindingKind.Strength strength = finding.raisedBy().get(fault.id());
        return strength == null || !facts.fits(strength.needs()) ? 0 : strength.chance();
    }

    private void add(Fault fault) {
        switch (fault.at()) {
            case CYLINDER -> {
                faults.add(fault);
                List<Body> all = new ArrayList<>();
                for (Grade grade : fault.grades()) {
                    Condition condition = Condition.HEALTHY.with(grade);
                    all.add(new Body(grade.share(), condition, number(condition)));
                }
                boolean sound = all.stream().allMatch(body -> body.condition().sound());
                bodies.add(sound ? List.of() : List.copyOf(all));
            }
            case NEIGHBOURS -> {
                for (List<Integer> bank : facts.layout().banks()) {
                    for (int i = 0; i + 1 < bank.size(); i++) {
                        addMembers(fault, new Where(Place.NEIGHBOURS, bank.subList(i, i + 2), 0));
                    }
                }
            }
            case BANK -> {
                for (int bank = 0; bank < facts.layout().banks().size(); bank++) {
                    addMembers(fault, new Where(Place.BANK, facts.layout().banks().get(bank), bank + 1));
                }
            }
            case ENGINE -> {
                List<Integer> all = new ArrayList<>();
                facts.layout().banks().forEach(all::addAll);
                addMembers(fault, new Where(Place.ENGINE, all, 0));
            }
        }
    }

    private void addMembers(Fault fault, Where where) {
        int identity = members.isEmpty() ? 0 : members.getLast().identity() + 1;
        double odds = fault.chance().alone() / (1 - fault.chance().alone());
        if (fault.grades().isEmpty()) {
            members.add(new Member(fault, where, identity, odds, untouched()));
        } else if (fault.each()) {
            List<Member.Option> options = new ArrayList<>();
            for (Grade grade : fault.grades()) {
                options.add(new Member.Option(grade.share(), Condition.HEALTHY.with(grade), 0, 0, 0));
            }
            members.add(new Member(fault, where, identity, odds, spread(where, relative(options))));
        } else {
            for (Grade grade : fault.grades()) {
                members.add(new Member(
                        fault, where, identity, odds * grade.share(), shared(fault, where, grade)));
            }
        }
    }

    /** Balance and current are read against the other cylinders, so what all share does not show in them. */
    private List<Member.Option> relative(List<Member.Option> options) {
        double power = 0;
        double compression = 0;
        double[] expected = new double[2];
        for (Member.Option option : options) {
            gauges.compression(option.condition(), expected);
            power += option.chance() * option.condition().power();
            compression += option.chance() * expected[0];
        }
        List<Member.Option> relative = new ArrayList<>();
        for (Member.Option option : options) {
            relative.add(option(
                    option.chance(), option.condition().shared(Math.max(power, 0.01), compression)));
        }
        return relative;
    }

    private List<List<Member.Option>> shared(Fault fault, Where where, Grade grade) {
        Condition condition = Condition.HEALTHY.with(grade);
        if (fault.at() == Place.ENGINE) {
            return spread(where, relative(List.of(new Member.Option(1, condition, 0, 0, 0))));
        }
        if (fault.at() == Place.BANK) {
            return spread(where, List.of(option(1, condition)));
        }
        List<List<Member.Option>> options = new ArrayList<>(untouched());
        int a = where.cylinders().get(0);
        int b = where.cylinders().get(1);
        double open = knowledge.physics().openValve();
        List<Integer> firing = facts.layout().firing();
        options.set(a - 1, List.of(option(1, OpenValves.heard(condition, firing, a, b, open))));
        options.set(b - 1, List.of(option(1, OpenValves.heard(condition, firing, b, a, open))));
        return options;
    }

    private List<List<Member.Option>> spread(Where where, List<Member.Option> options) {
        List<List<Member.Option>> all = new ArrayList<>(untouched());
        where.cylinders().forEach(cylinder -> all.set(cylinder - 1, options));
        return all;
    }

    private Member.Option option(double chance, Condition condition) {
        int number = number(condition);
        boolean plain = condition.leak().equals(Leak.NONE)
                && Math.abs(condition.power() - 1) < 1e-12
                && Math.abs(condition.common() - gauges.shift(condition)) < 1e-12;
        return new Member.Option(chance, condition, number, plain ? 0 : number, plain ? gauges.shift(condition) : 0);
    }

    private int number(Condition condition) {
        numbered.add(condition);
        return numbered.size() - 1;
    }

    /** What the gauges show when all these conditions come together; each by its number, 0 for none. Worked out once. */
    Expected expected(int a, int b, int c, int d) {
        long key = (((long) a << 48) | ((long) b << 32) | ((long) c << 16) | d) * SPREAD;
        Expected known = expected.get(key);
        if (known == null) {
            Condition all = numbered.get(a).with(numbered.get(b)).with(numbered.get(c)).with(numbered.get(d));
            known = new Expected(all, gauges);
            expected.put(key, known);
        }
        return known;
    }

    private List<List<Member.Option>> untouched() {
        List<List<Member.Option>> all = new ArrayList<>();
        for (int i = 0; i < facts.cylinders(); i++) {
            all.add(List.of());
        }
        return all;
    }

    /** What is known. */
    public Knowledge knowledge() {
        return knowledge;
    }

    /** The engine. */
    public EngineFacts facts() {
        return facts;
    }

    Gauges gauges() {
        return gauges;
    }

    HealthyGrid grid() {
        return grid;
    }

    /** Faults that a single cylinder can have. */
    List<Fault> faults() {
        return faults;
    }

    /** Ways a cylinder may be with each of them; none when no figure shows it. */
    List<List<Body>> bodies() {
        return bodies;
    }

    List<Member> members() {
        return members;
    }

    /** Findings of a cylinder that are raised by faults, and not heard. */
    List<FindingKind> cylinderFindings() {
        return cylinderFindings;
    }

    /** False alarms of these. */
    double[] alarms() {
        return alarms;
    }

    /** For each of these, the chance that each fault of a cylinder does not raise it. */
    double[][] passes() {
        return passes;
    }

    /** The same for each member of the engine slice. */
    double[][] memberPasses() {
        return memberPasses;
    }
}
