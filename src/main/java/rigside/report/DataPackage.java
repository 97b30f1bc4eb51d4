package rigside.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigside.analysis.Shown;
import rigside.session.Recorded;
import rigside.session.State;

/**
 * A session as tables for other programs, with a description of every column: a Tabular Data
 * Package (Frictionless Data, version 1.0).
 *
 * @param files each file's bytes by its name, the description first
 * @param again how the comparisons are made again from the tables alone
 */
public record DataPackage(Map<String, byte[]> files, List<Again> again) {
    /** The name the standard has for the description. */
    public static final String DESCRIPTION = "datapackage.json";

    public DataPackage {
        files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
        again = List.copyOf(again);
    }

    /**
     * The package of a session, as far as concealment lets it out.
     *
     * @param name of the session, such as that of its folder
     * @param shown what may be told of {@code state}
     * @param events all of them, in order
     * @param damage what is wrong with the journal, in words; empty when nothing is
     */
    public static DataPackage of(
            String name, State state, Shown shown, List<Recorded> events, String damage) {
        Told told = new Told(state, shown, events);
        Map<String, byte[]> tables = new LinkedHashMap<>();
        PackageDescription description = new PackageDescription(told, name, damage);
        for (Resource<?> each : resources(told)) {
            byte[] bytes = Csv.bytes(each);
            tables.put(each.file(), bytes);
            description.add(each, bytes);
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(DESCRIPTION, description.json().getBytes(StandardCharsets.UTF_8));
        files.putAll(tables);
        return new DataPackage(files, Again.of(told));
    }

    /** The tables, each after those that it names. */
    private static List<Resource<?>> resources(Told told) {
        List<Resource<?>> all = new ArrayList<>();
        all.add(DeclaredTables.conditions(told));
        all.add(DeclaredTables.measures(told));
        all.add(DonningTables.donnings(told));
        all.add(EntryTable.of(told));
        all.add(AmendmentTable.of(told));
        all.add(AnswerTables.facts(told));
        all.add(AnswerTables.observations(told));
        all.add(PartTables.trials(told));
        all.add(PartTables.exercises(told));
        all.add(DonningTables.values(told));
        all.add(ComparisonTable.of(told));
        all.add(EventTable.of(told));
        all.addAll(AgainTables.of(told));
        return List.copyOf(all);
    }
}
