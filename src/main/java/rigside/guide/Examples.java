package rigside.guide;

import java.util.LinkedHashMap;
import java.util.Map;
import rigside.rig.RigElements;
import rigside.yaml.Element;

/**
 * The examples of the pages. Each is the part of a protocol file that matters, by whole outermost
 * keys; put in place of the same keys of the smallest protocol it is a whole file. Those of rig
 * files are whole ones.
 */
public final class Examples {
    /** The smallest protocol. */
    private static final String SMALLEST = "protocol";

    /** Elements that are shown within the example of another one. */
    private static final Map<String, String> WITHIN =
            Map.ofEntries(
                    Map.entry("scale", "observations"),
                    Map.entry("specimen", "condition"),
                    Map.entry("fit-factor", "exercises"),
                    Map.entry("required", "exercises"),
                    Map.entry("exercise", "exercises"),
                    Map.entry("timed-inhalation", "trials"),
                    Map.entry("typed-number", "form"),
                    Map.entry("conceal", "plan"),
                    Map.entry("check", "checklist"),
                    Map.entry("group-of-steps", "group"),
                    Map.entry("calculated", "group"),
                    Map.entry("wearer", "simulated-rig"),
                    Map.entry("level", "simulated-rig"),
                    Map.entry("measured", "simulated-rig"),
                    Map.entry("feed", "instruments"),
                    Map.entry("side", "instruments"),
                    Map.entry("zero", "gates"),
                    Map.entry("ambient", "gates"));

    private Examples() {}

    /** The lines that show an element. */
    public static String of(Element element) {
        return text(named(element));
    }

    /** A whole file that shows an element, to start one's own from. */
    public static String file(Element element) {
        if (RigElements.all().contains(element)) {
            return of(element);
        }
        Map<String, String> parts = parts(text(SMALLEST));
        parts.putAll(parts(of(element)));
        return String.join("", parts.values());
    }

    private static String named(Element element) {
        return WITHIN.getOrDefault(element.name(), element.name());
    }

    private static String text(String name) {
        return Texts.read("examples/" + name + ".yaml");
    }

    /** The outermost keys of a file, each with all its lines. */
    private static Map<String, String> parts(String file) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (String part : file.split("(?m)^(?=[a-z-]+:)", -1)) {
            if (!part.isEmpty()) {
                parts.put(part.substring(0, part.indexOf(':')), part);
            }
        }
        return parts;
    }
}
