package rigside.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What is worth a second look in a table, among the values the looks rest on.
 *
 * @param setting what was fixed beforehand
 * @param values of each condition by round, the reference first
 * @param comparisons as they stand
 */
record TableFlags(
        Setting setting,
        Map<String, SortedMap<Integer, Double>> values,
        List<Comparison> comparisons) {

    List<Flag> all() {
        Map<String, String> titles = new LinkedHashMap<>();
        Map<String, SortedMap<Integer, Double>> used = new LinkedHashMap<>();
        for (String condition : values.keySet()) {
            titles.put(condition, condition);
            used.put(condition, new TreeMap<>());
        }
        for (Comparison each : comparisons) {
            Pairing pairing = pairing(each.condition(), List.of());
            Pairing first = pairing.first(setting, setting.plan().most());
            used.get(reference()).putAll(first.reference());
            used.get(each.condition()).putAll(first.other());
        }
        TreeSet<Integer> rounds = new TreeSet<>();
        List<DonningValue> lines = new ArrayList<>();
        used.forEach(
                (condition, all) -> {
                    rounds.addAll(all.keySet());
                    all.forEach((round, value) -> lines.add(line(round, condition, value)));
                });
        return Flags.of(
                new Watched(setting, lines, List.copyOf(rounds), titles),
                new WhatIfs(
                        comparisons,
                        (condition, left) ->
                                pairing(condition, left)
                                        .comparison(new Wording(setting, condition, reference()))));
    }

    private String reference() {
        return values.keySet().iterator().next();
    }

    private Pairing pairing(String condition, List<DonningValue> left) {
        return new Pairing(but(reference(), left), but(condition, left));
    }

    private SortedMap<Integer, Double> but(String condition, List<DonningValue> left) {
        SortedMap<Integer, Double> kept = new TreeMap<>(values.get(condition));
        left.stream()
                .filter(each -> each.condition().equals(condition))
                .forEach(each -> kept.remove(each.round()));
        return kept;
    }

    private DonningValue line(int round, String condition, double value) {
        return new DonningValue(
                0,
                round,
                condition,
                Standing.COUNTS,
                OptionalDouble.of(value),
                OptionalDouble.of(value),
                setting.scale().step(setting.measure().resolution(), value),
                false,
                false,
                Level.NONE,
                List.of(),
                List.of(),
                List.of());
    }
}
