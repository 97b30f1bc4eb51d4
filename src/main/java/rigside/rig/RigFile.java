package rigside.rig;

import java.nio.file.Path;
import rigside.yaml.Document;
import rigside.yaml.Fields;
import rigside.yaml.Value;

/** What a rig file describes: an invented wearer, or instruments. */
public sealed interface RigFile {
    /** What it is, in words. */
    String title();

    /** An invented wearer answers for the instruments. */
    record Simulated(Wearer wearer) implements RigFile {
        @Override
        public String title() {
            return wearer.title();
        }
    }

    /** Instruments are attached. */
    record Attached(Instruments instruments) implements RigFile {
        @Override
        public String title() {
            return instruments.title();
        }
    }

    /**
     * What the text describes, or every problem in it.
     *
     * @param name the file's name, used in problems only
     * @param folder the folder that paths in it start from
     */
    static Document<RigFile> read(String name, String text, Path folder) {
        return Document.read(name, text, fields -> read(fields, folder));
    }

    /**
     * What the bytes of a file describe, or every problem in it.
     *
     * @param name the file's name, used in problems only
     * @param folder the folder that paths in it start from
     */
    static Document<RigFile> read(String name, byte[] bytes, Path folder) {
        return Document.read(name, bytes, fields -> read(fields, folder));
    }

    private static Value<RigFile> read(Fields fields, Path folder) {
        return fields.speaksOf(RigElements.DECLARES_INSTRUMENTS)
                ? InstrumentsReader.read(fields, folder).map(Attached::new)
                : WearerReader.wearer(fields).map(Simulated::new);
    }
}
