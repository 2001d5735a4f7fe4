package gudgeon.app.format;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Groups of names that wait for each other in a circle: strongly connected components of more than one name, and names that
 * wait for themselves. Without recursion, so that a long chain cannot exhaust the stack.
 *
 * <p>Source: R. Tarjan, Depth-first search and linear graph algorithms, SIAM Journal on Computing 1 (1972).
 */
final class Cycles {
    private final Map<String, List<String>> arrows;
    private final Map<String, Integer> index = new HashMap<>();
    private final Map<String, Integer> low = new HashMap<>();
    private final Deque<String> open = new ArrayDeque<>();
    private final Set<String> onStack = new HashSet<>();
    private final List<List<String>> found = new ArrayList<>();

    private Cycles(Map<String, List<String>> arrows) {
        this.arrows = arrows;
    }

    /** The circles, each in the order of the map's keys. */
    static List<List<String>> of(Map<String, List<String>> arrows) {
        Cycles cycles = new Cycles(arrows);
        for (String start : arrows.keySet()) {
            if (!cycles.index.containsKey(start)) {
                cycles.walk(start);
            }
        }
        return cycles.found;
    }

    private record Frame(String at, int next) {}

    private void walk(String start) {
        Deque<Frame> frames = new ArrayDeque<>();
        enter(start);
        frames.push(new Frame(start, 0));
        while (!frames.isEmpty()) {
            Frame frame = frames.pop();
            List<String> targets = arrows.getOrDefault(frame.at, List.of());
            if (frame.next == targets.size()) {
                leave(frame.at);
                if (!frames.isEmpty()) {
                    lower(frames.element().at, number(low, frame.at));
                }
                continue;
            }
            frames.push(new Frame(frame.at, frame.next + 1));
            String target = targets.get(frame.next);
            if (!index.containsKey(target)) {
                enter(target);
                frames.push(new Frame(target, 0));
            } else if (onStack.contains(target)) {
                lower(frame.at, number(index, target));
            }
        }
    }

    private void enter(String name) {
        index.put(name, index.size());
        low.put(name, number(index, name));
        open.push(name);
        onStack.add(name);
    }

    private void lower(String name, int to) {
        low.merge(name, to, Math::min);
    }

    private static int number(Map<String, Integer> map, String name) {
        return map.getOrDefault(name, 0);
    }

    private void leave(String name) {
        if (number(low, name) != number(index, name)) {
            return;
        }
        Set<String> members = new HashSet<>();
        String member;
        do {
            member = open.pop();
            onStack.remove(member);
            members.add(member);
        } while (!member.equals(name));
        if (members.size() > 1 || arrows.getOrDefault(name, List.of()).contains(name)) {
            found.add(arrows.keySet().stream().filter(members::contains).toList());
        }
    }
}
