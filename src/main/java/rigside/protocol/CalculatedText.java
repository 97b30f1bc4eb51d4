package rigside.protocol;

import java.util.HashSet;
import java.util.List;
import rigside.measure.Calculation;
import rigside.measure.Unit;
import rigside.yaml.Entry;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/**
 * A calculated measure as it is written; whether it can be calculated shows only when all steps are
 * known.
 *
 * @param measure the measure's id
 * @param function how it is calculated
 * @param of the ids it is calculated from, each at its place
 * @param unit the unit the measure is shown in
 */
record CalculatedText(
        Value<String> measure,
        Value<Calculation> function,
        Value<List<Value<String>>> of,
        Value<Unit> unit) {

    static CalculatedText read(Fields fields, Value<String> measure, Value<Unit> unit) {
        Value<Calculation> function = fields.required("function").oneOf(Calculation.class);
        Entry list = fields.required("of");
        Value<List<Value<String>>> of =
                list.oneOrList(
                                item -> {
                                    Value<String> id = item.line();
                                    return id.map(same -> id);
                                })
                        .must(
                                ids ->
                                        new HashSet<>(ids.stream().map(Value::get).toList()).size()
                                                == ids.size(),
                                ids -> "'of' names something twice",
                                "keep one of them; all its answers in a donning enter anyway");
        return new CalculatedText(measure, function, of, unit);
    }

    Value<Measure.Calculated> kind() {
        return function.then(
                how ->
                        of.map(
                                ids ->
                                        new Measure.Calculated(
                                                how, ids.stream().map(Value::get).toList())));
    }
}
