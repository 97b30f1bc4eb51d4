package rigside.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rigside.decide.Limits;

/** An object of JSON while it is put together; its keys stay in order. */
final class JsonText {
    private final Map<String, String> fields = new LinkedHashMap<>();

    JsonText text(String key, String value) {
        return raw(key, AnalysisJson.text(value));
    }

    /** Null where it is empty. */
    JsonText text(String key, Optional<String> value) {
        return raw(key, value.map(AnalysisJson::text).orElse("null"));
    }

    JsonText texts(String key, List<String> values) {
        return raw(key, list(values.stream().map(AnalysisJson::text).toList()));
    }

    JsonText wholes(String key, List<Integer> values) {
        return raw(key, list(values.stream().map(String::valueOf).toList()));
    }

    JsonText whole(String key, long value) {
        return raw(key, String.valueOf(value));
    }

    /** Null where it is not finite. */
    JsonText number(String key, double value) {
        return raw(
                key,
                Double.isFinite(value) ? AnalysisJson.number(OptionalDouble.of(value)) : "null");
    }

    JsonText truth(String key, boolean value) {
        return raw(key, String.valueOf(value));
    }

    JsonText limits(String key, double low, double high) {
        return raw(key, "[" + finite(low) + "," + finite(high) + "]");
    }

    /** Null where there are none. */
    JsonText limits(String key, Optional<Limits> limits) {
        return limits.map(each -> limits(key, each.low(), each.high()))
                .orElseGet(() -> raw(key, "null"));
    }

    private static String finite(double value) {
        return Double.isFinite(value) ? AnalysisJson.number(OptionalDouble.of(value)) : "null";
    }

    JsonText objects(String key, List<JsonText> values) {
        return raw(key, list(values.stream().map(JsonText::toString).toList()));
    }

    JsonText object(String key, Optional<JsonText> value) {
        return raw(key, value.map(JsonText::toString).orElse("null"));
    }

    private JsonText raw(String key, String json) {
        fields.put(key, json);
        return this;
    }

    private static String list(List<String> values) {
        return "[" + String.join(",", values) + "]";
    }

    @Override
    public String toString() {
        return fields.entrySet().stream()
                .map(each -> AnalysisJson.text(each.getKey()) + ":" + each.getValue())
                .collect(Collectors.joining(",", "{", "}"));
    }
}
