package rigside.protocol;

import java.util.List;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/**
 * An earlier answer a step depends on, as it is written; what it means shows only when all steps
 * before it are known.
 *
 * @param answer the id of the fact, field or check
 * @param way {@code is}, {@code above} or {@code below}
 * @param limit what follows it
 */
record OnlyIfText(Value<String> answer, String way, Value<String> limit) {
    static final String IS = "is";
    static final String ABOVE = "above";
    static final String BELOW = "below";
    static final List<String> WAYS = List.of(IS, ABOVE, BELOW);

    static Value<OnlyIfText> read(Fields fields) {
        return fields.optional("only-if")
                .fields(
                        keys -> {
                            keys.is(DependElements.EARLIER_ANSWER);
                            Value<String> answer = keys.required("answer").line();
                            String way = keys.oneKeyOf(WAYS).orElse(IS);
                            Value<String> limit = keys.optional(way).line();
                            return keys.make(() -> new OnlyIfText(answer, way, limit));
                        });
    }
}
