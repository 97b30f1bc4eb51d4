package rigside.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.security.MessageDigest;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A data package held to its own description. The rules are those of Frictionless Data 1.0
 * (specs.frictionlessdata.io), each named where it is asked.
 */
final class DescribedPackage {
    private final Map<String, byte[]> files;
    private final JsonNode root;
    private final Map<String, List<Map<String, String>>> rows = new LinkedHashMap<>();
    private final List<String> wrong = new ArrayList<>();

    private DescribedPackage(Map<String, byte[]> files) throws IOException {
        this.files = files;
        this.root = new ObjectMapper().readTree(files.get("datapackage.json"));
    }

    /** Everything in which it is not what it says it is. */
    static List<String> faults(Map<String, byte[]> files) throws Exception {
        DescribedPackage described = new DescribedPackage(files);
        described.check();
        return described.wrong;
    }

    private void check() throws Exception {
        // Data Package: "resources" is required, with at least one; "name" is lower case and .-_
        must(root.path("name").asText().matches("[a-z0-9._-]+"), "name of the package");
        must(root.path("profile").asText().equals("tabular-data-package"), "profile");
        must(!root.path("resources").isEmpty(), "no resources");
        Set<String> names = new HashSet<>();
        Set<String> paths = new HashSet<>(Set.of("datapackage.json"));
        for (JsonNode resource : root.path("resources")) {
            String name = resource.path("name").asText();
            // Data Resource: "name" is unique and of [-a-z0-9._/]; "path" is relative, without ..
            must(names.add(name) && name.matches("[-a-z0-9._/]+"), name + ": name");
            String path = resource.path("path").asText();
            paths.add(path);
            must(!path.startsWith("/") && !path.contains(".."), name + ": path " + path);
            byte[] bytes = files.get(path);
            must(resource.path("bytes").asInt() == bytes.length, name + ": bytes");
            String hash =
                    HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
            must(resource.path("hash").asText().equals("sha256:" + hash), name + ": hash");
            // Tabular Data Resource: the profile is named, and a schema is required
            must(
                    resource.path("profile").asText().equals("tabular-data-resource"),
                    name + ": profile");
            table(name, resource.path("schema"), bytes);
        }
        must(paths.equals(files.keySet()), "files " + files.keySet() + " against " + paths);
        for (JsonNode resource : root.path("resources")) {
            keys(resource.path("name").asText(), resource.path("schema"));
        }
    }

    private void table(String name, JsonNode schema, byte[] bytes) throws IOException {
        List<List<String>> lines = CsvTest.read(bytes);
        // Table Schema: fields in the order of the columns, each name once
        List<String> fields = new ArrayList<>();
        schema.path("fields").forEach(field -> fields.add(field.path("name").asText()));
        must(lines.get(0).equals(fields), name + ": header " + lines.get(0));
        must(new HashSet<>(fields).size() == fields.size(), name + ": a name twice");
        List<Map<String, String>> table = new ArrayList<>();
        for (List<String> line : lines.subList(1, lines.size())) {
            must(line.size() == fields.size(), name + ": cells of " + line);
            Map<String, String> row = new LinkedHashMap<>();
            for (int at = 0; at < fields.size(); at++) {
                row.put(fields.get(at), line.get(at));
            }
            table.add(row);
        }
        rows.put(name, table);
        for (JsonNode field : schema.path("fields")) {
            must(!field.path("description").asText().isBlank(), name + ": description");
            column(name + "." + field.path("name").asText(), field, table);
        }
    }

    private void column(String where, JsonNode field, List<Map<String, String>> table) {
        JsonNode constraints = field.path("constraints");
        Set<String> words = new HashSet<>();
        constraints.path("enum").forEach(word -> words.add(word.asText()));
        Set<String> met = new HashSet<>();
        for (Map<String, String> row : table) {
            String cell = row.get(field.path("name").asText());
            if (cell.isEmpty()) {
                // Table Schema: missingValues is [""]; required forbids what is missing
                must(!constraints.path("required").asBoolean(), where + ": required");
                continue;
            }
            must(isOf(field.path("type").asText(), cell), where + ": " + cell);
            must(words.isEmpty() || words.contains(cell), where + ": enum, " + cell);
            must(
                    met.add(cell) || !constraints.path("unique").asBoolean(),
                    where + ": unique, " + cell);
        }
    }

    /** Table Schema, types and formats; numbers also as XML Schema's decimal with an exponent. */
    private static boolean isOf(String type, String cell) {
        return switch (type) {
            case "integer" -> cell.matches("-?[0-9]+");
            case "number" -> cell.matches("-?[0-9]+(\\.[0-9]+)?(E[+-]?[0-9]+)?");
            case "boolean" -> cell.equals("true") || cell.equals("false");
            case "datetime" ->
                    cell.matches(".{19}\\.[0-9]{6}[+-][0-9]{2}:[0-9]{2}")
                            && OffsetDateTime.parse(cell) != null;
            case "string" -> true;
            default -> false;
        };
    }

    /** Table Schema: a primary key tells rows apart; a foreign key names a row, or is missing. */
    private void keys(String name, JsonNode schema) {
        Set<List<String>> seen = new HashSet<>();
        for (Map<String, String> row : rows.get(name)) {
            List<String> key = new ArrayList<>();
            schema.path("primaryKey").forEach(field -> key.add(row.get(field.asText())));
            must(!key.contains("") && !key.contains(null), name + ": key of " + row);
            must(seen.add(key), name + ": key twice, " + key);
        }
        for (JsonNode link : schema.path("foreignKeys")) {
            JsonNode reference = link.path("reference");
            Set<String> there = new HashSet<>();
            for (Map<String, String> row : rows.get(reference.path("resource").asText())) {
                there.add(row.get(reference.path("fields").asText()));
            }
            for (Map<String, String> row : rows.get(name)) {
                String cell = row.get(link.path("fields").asText());
                must(cell.isEmpty() || there.contains(cell), name + ": link of " + row);
            }
        }
    }

    private void must(boolean holds, String what) {
        if (!holds) {
            wrong.add(what);
        }
    }
}
