package rigside.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import rigside.protocol.Plan;
import rigside.protocol.Protocol;
import rigside.session.Event;

/**
 * The description of a data package, as JSON: profile {@code tabular-data-package} of Frictionless
 * Data 1.0 (specs.frictionlessdata.io: Data Package, Data Resource, Tabular Data Resource, Table
 * Schema, CSV Dialect). The property {@code unit} of a column and those of the package that begin
 * with {@code rigside-} are our own, which the standard allows. Licence and sources are left to the
 * user.
 */
final class PackageDescription {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Told told;
    private final ObjectNode root = JSON.createObjectNode();
    private final ArrayNode resources;

    PackageDescription(Told told, String name, String damage) {
        this.told = told;
        Event.SessionOpened opened = told.state().opening().orElseThrow().event();
        Protocol protocol = told.state().protocol();
        root.put("profile", "tabular-data-package");
        root.put("name", named(name));
        root.put("title", Harmless.visible(protocol.title()));
        root.put("description", description(opened, protocol, damage));
        root.put("rigside-program-version", opened.programVersion());
        root.put("rigside-protocol-name", Harmless.visible(opened.protocolFile()));
        root.put(
                "rigside-protocol-sha256",
                sha256(opened.protocolText().getBytes(StandardCharsets.UTF_8)));
        root.put("rigside-simulated", opened.simulated());
        if (told.isOver()) {
            root.put("rigside-seed", opened.seed());
        }
        if (!protocol.conditions().isEmpty()) {
            plan(root.putObject("rigside-plan"), protocol.plan());
        }
        resources = root.putArray("resources");
    }

    /** What was fixed before the first donning. */
    private static void plan(ObjectNode node, Plan plan) {
        node.put("fewest", plan.fewest())
                .put("most", plan.most())
                .put("confidence", plan.confidence())
                .put("exponent", plan.exponent())
                .put("design", Spelt.word(plan.design()))
                .put("order", Spelt.word(plan.order()))
                .put("shared-over-measures", plan.sharedOverMeasures());
    }

    private String description(Event.SessionOpened opened, Protocol protocol, String damage) {
        StringBuilder text = new StringBuilder();
        if (opened.simulated()) {
            text.append("Simulated: every value is invented. ");
        }
        text.append(
                        switch (protocol.purpose()) {
                            case COMPARISON -> "A respirator comparison at a bench by one wearer: ";
                            case REPEATABILITY ->
                                    "One respirator put on again and again at a bench by one"
                                            + " wearer: ";
                            case INSTRUMENT_CHECK -> "A check of instruments at a bench: ";
                        })
                .append(Harmless.visible(protocol.question()))
                .append(
                        " It is not a certified fit test. Numbers have a point and as many digits as")
                .append(
                        " give the same number back; times are ISO 8601 with their offset from UTC.")
                .append(" A text that a spreadsheet would run as a formula, or that begins with an")
                .append(" apostrophe, has one apostrophe in front: without it it is the text as it")
                .append(" was. Characters that nobody sees or a terminal obeys are replaced by")
                .append(" U+FFFD.");
        opened.paper()
                .ifPresent(
                        paper ->
                                text.append(" The session was ")
                                        .append(paper.words())
                                        .append(": its times are those of typing."));
        if (!told.isOver()) {
            text.append(" The session is open: this is what there is so far.");
        }
        if (!told.isWhole()) {
            text.append(" Left out, with all times and events, is what is concealed: ")
                    .append(told.shown().concealed());
        }
        if (!damage.isEmpty()) {
            text.append(" The journal is damaged, and this is what stands before the damage: ")
                    .append(Harmless.visible(damage));
        }
        return text.toString();
    }

    /** A name that the standard takes: small letters, digits, point, hyphen and underscore. */
    private static String named(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-");
        return plain.isEmpty() ? "session" : plain;
    }

    void add(Resource<?> table, byte[] bytes) {
        ObjectNode resource = resources.addObject();
        resource.put("profile", "tabular-data-resource");
        resource.put("name", table.name());
        resource.put("path", table.file());
        resource.put("title", Harmless.visible(table.title()));
        resource.put("description", Harmless.visible(table.description()));
        resource.put("format", "csv");
        resource.put("mediatype", "text/csv");
        resource.put("encoding", "utf-8");
        resource.put("bytes", bytes.length);
        resource.put("hash", "sha256:" + sha256(bytes));
        resource.putObject("dialect")
                .put("csvddfVersion", 1.2)
                .put("delimiter", ",")
                .put("lineTerminator", Csv.END_OF_LINE)
                .put("quoteChar", "\"")
                .put("doubleQuote", true)
                .put("skipInitialSpace", false)
                .put("header", true)
                .put("caseSensitiveHeader", true);
        schema(resource.putObject("schema"), table);
    }

    private static void schema(ObjectNode schema, Resource<?> table) {
        ArrayNode fields = schema.putArray("fields");
        table.columns().forEach(column -> field(fields.addObject(), column));
        schema.putArray("missingValues").add("");
        ArrayNode key = schema.putArray("primaryKey");
        table.key().forEach(key::add);
        if (!table.links().isEmpty()) {
            ArrayNode links = schema.putArray("foreignKeys");
            for (Resource.Link each : table.links()) {
                ObjectNode link = links.addObject();
                link.put("fields", each.column());
                link.putObject("reference")
                        .put("resource", each.resource())
                        .put("fields", each.other());
            }
        }
    }

    private static void field(ObjectNode field, Column<?> column) {
        field.put("name", column.name());
        field.put("type", Spelt.word(column.type()));
        field.put("format", column.type() == Column.Type.DATETIME ? Moments.PATTERN : "default");
        field.put("title", title(column.name()));
        field.put(
                "description",
                column.unit().isEmpty()
                        ? column.description()
                        : column.description() + " Unit: " + column.unit() + ".");
        if (!column.unit().isEmpty()) {
            field.put("unit", column.unit());
        }
        if (column.required() || column.unique() || !column.words().isEmpty()) {
            ObjectNode constraints = field.putObject("constraints");
            if (column.required()) {
                constraints.put("required", true);
            }
            if (column.unique()) {
                constraints.put("unique", true);
            }
            if (!column.words().isEmpty()) {
                ArrayNode words = constraints.putArray("enum");
                column.words().forEach(words::add);
            }
        }
    }

    /** The name of a column in plain words. */
    private static String title(String name) {
        String words = name.replace('_', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    String json() {
        DefaultPrettyPrinter lines =
                new DefaultPrettyPrinter()
                        .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                        .withArrayIndenter(new DefaultIndenter("  ", "\n"));
        try {
            return JSON.writer(lines).writeValueAsString(root) + "\n";
        } catch (JsonProcessingException noTree) {
            throw new IllegalStateException("a tree of plain values", noTree);
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException("SHA-256", everyJavaHasIt);
        }
    }
}
