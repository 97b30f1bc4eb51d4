package rigside.rig;

import java.util.ArrayList;
import java.util.List;
import rigside.measure.Dimension;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** What a rig file may hold, as told to those who write one: a simulated rig, or instruments. */
public final class RigElements {
    /** The key by which a file declares instruments. */
    public static final String DECLARES_INSTRUMENTS = "feeds";

    static final Element LEVEL =
            Element.of(
                    "level",
                    "About how large values of an invented wearer are, and how far they spread. A"
                            + " spread of 20 % is about a factor of 1.2 either way: their natural"
                            + " logarithm has a standard deviation of ln 1.2.",
                    Key.required(
                            "median",
                            RigShapes.AMOUNT,
                            "The middle: of 'fit-factor' a plain number, of 'inhalation' a time, of"
                                    + " 'peak-pressure' a pressure, above 0."),
                    Key.required(
                            "between-donnings",
                            RigShapes.PERCENT,
                            "How far donnings spread around it; at most 900 %."),
                    Key.required(
                            "within-donning",
                            RigShapes.PERCENT,
                            "How far exercises or trials of one donning spread; at most 900 %."));

    static final Element MEASURED =
            Element.of(
                    "measured",
                    "What one measure of a protocol gives, where the three levels do not tell it:"
                            + " numbers that are typed, and measures that differ from the others of"
                            + " their kind.",
                    Key.required("measure", RigShapes.LINE, "The id of the measure."),
                    Key.required("median", RigShapes.AMOUNT, "The middle of its values."),
                    Key.required(
                            "between-donnings",
                            RigShapes.PERCENT_OR_AMOUNT,
                            "How far donnings spread around it: a percentage spreads by factors, an"
                                    + " amount by differences."),
                    Key.required(
                            "within-donning",
                            RigShapes.PERCENT_OR_AMOUNT,
                            "The same of the readings of one donning; both in per cent, or neither."));

    static final Element WEARER =
            Element.of(
                    "wearer",
                    "How the invented wearer fares in one condition.",
                    Key.required(
                            "id",
                            RigShapes.LINE,
                            "The id of a condition of the protocol. A condition that is not listed"
                                    + " fares as the first one of the list."),
                    Key.required("fit-factor", new Shape.Group(LEVEL), "Of an exercise."),
                    Key.required("inhalation", new Shape.Group(LEVEL), "The time of a trial."),
                    Key.required(
                            "peak-pressure",
                            new Shape.Group(LEVEL),
                            "The peak suction of a breath in an exercise."),
                    Key.optional(
                            "measures",
                            new Shape.Items(new Shape.Group(MEASURED), 1),
                            "the three levels above tell all, and typed numbers are invented",
                            "Measures with values of their own."));

    /** A file that describes an invented wearer. */
    public static final Element SIMULATED =
            Element.of(
                    "simulated-rig",
                    "A whole rig file that stands for the instruments and the wearer: every value"
                            + " is invented, and every session with it is marked so. It is for"
                            + " learning and for rehearsals. Named like a protocol, with"
                            + " '.rig.yaml' at its end, and beside it, it answers for that one.",
                    format(),
                    title(),
                    about(),
                    Key.required(
                            "ambient",
                            RigShapes.above0(Dimension.CONCENTRATION, "4000 /cm3"),
                            "The concentration of particles in the room."),
                    Key.required(
                            "ambient-varies",
                            RigShapes.PERCENT,
                            "How far samples of it spread; at most 900 %."),
                    Key.optional(
                            "gauge",
                            new Shape.YesOrNo(),
                            "no",
                            "Whether a pressure gauge is followed all the time."),
                    Key.required(
                            "conditions",
                            new Shape.Items(new Shape.Group(WEARER), 1),
                            "How the wearer fares in each."));

    static final Element SIDE =
            Element.of(
                    "side",
                    "How the lines of a switched counter say what its tube is on.",
                    Key.sometimes(
                            "column",
                            RigShapes.LINE,
                            "where the feed has a 'column'; with a 'pattern' write (?<side>...)"
                                    + " there instead",
                            "The number or header name of the column that says it."),
                    Key.required("ambient", RigShapes.LINE, "What it says on the room."),
                    Key.required("mask", RigShapes.LINE, "What it says on the mask."));

    /** One instrument. */
    static final Element FEED = FeedElement.FEED;

    /** A file that declares instruments. */
    public static final Element INSTRUMENTS =
            Element.of(
                    "instruments",
                    "A whole rig file that says which instruments stand on the bench, where their"
                            + " lines come from and how a line is read. 'rigside feed FILE' shows"
                            + " what comes in, before a session relies on it.",
                    format(),
                    title(),
                    about(),
                    Key.required(
                            DECLARES_INSTRUMENTS,
                            new Shape.Items(new Shape.Group(FEED), 1),
                            "The instruments; each quantity from one of them only."));

    private RigElements() {}

    /** Every element of rig files, whole files first. */
    public static List<Element> all() {
        List<Element> all = new ArrayList<>(SIMULATED.withAllInIt());
        all.addAll(INSTRUMENTS.withAllInIt());
        return List.copyOf(all);
    }

    private static Key format() {
        return Key.required("format", new Shape.Whole(1, 1), "The version of this kind of file.");
    }

    private static Key title() {
        return Key.required("title", RigShapes.LINE, "What the home screen calls it.");
    }

    private static Key about() {
        return Key.optional("about", new Shape.Text(), "nothing", "Remarks to yourself.");
    }
}
