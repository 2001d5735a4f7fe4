package gudgeon.core.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is known about engines of this kind: faults, findings, tests, physics. Names that refer to one another must resolve.
 *
 * @param faults in file order
 * @param findings in file order
 * @param tests in file order
 * @param ready minutes that each state saves when it is there
 * @param physics of readings
 */
public record Knowledge(
        Map<String, Fault> faults,
        Map<String, FindingKind> findings,
        Map<String, TestKind> tests,
        Map<String, Double> ready,
        Physics physics) {
    public Knowledge {
        faults = Collections.unmodifiableMap(new LinkedHashMap<>(faults));
        findings = Collections.unmodifiableMap(new LinkedHashMap<>(findings));
        tests = Collections.unmodifiableMap(new LinkedHashMap<>(tests));
        ready = Collections.unmodifiableMap(new LinkedHashMap<>(ready));
        for (FindingKind finding : findings.values()) {
            if (!tests.containsKey(finding.test())) {
                throw new IllegalArgumentException(finding.id() + " belongs to no known test: " + finding.test());
            }
            for (String fault : finding.raisedBy().keySet()) {
                if (!faults.containsKey(fault)) {
                    throw new IllegalArgumentException(finding.id() + " is raised by no known fault: " + fault);
                }
            }
        }
    }

    /** Lists by id, in the given order. */
    public static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        all.forEach(each -> map.put(id.apply(each), each));
        return map;
    }

    /** The fault of an id. */
    public Fault fault(String id) {
        Fault fault = faults.get(id);
        if (fault == null) {
            throw new IllegalArgumentException("no fault is called " + id);
        }
        return fault;
    }

    /** The finding of an id. */
    public Optional<FindingKind> findFinding(String id) {
        return Optional.ofNullable(findings.get(id));
    }

    /** The test of an id. */
    public Optional<TestKind> findTest(String id) {
        return Optional.ofNullable(tests.get(id));
    }

    /** The same with other chances of faults; for each fault a factor, 1 where none is given. */
    public Knowledge withChances(Map<String, Double> factors) {
        Map<String, Fault> changed = new LinkedHashMap<>();
        faults.forEach((id, fault) -> {
            double chance = Math.min(0.49, fault.chance().alone() * factors.getOrDefault(id, 1.0));
            changed.put(id, new Fault(id, fault.words(), fault.at(), fault.needs(),
                    new Fault.Chance(chance, fault.chance().with()), fault.repair(), fault.each(), fault.grades()));
        });
        return new Knowledge(changed, findings, tests, ready, physics);
    }
}
