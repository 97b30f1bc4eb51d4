package rigside;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The map of packages, as data: who may import whom, and which library stays where. */
class ArchitectureTest {
    /** Fewer would mean that the classes were not found, and every rule would hold of nothing. */
    private static final int FEWEST_CLASSES = 150;

    private static final String MAIN = "main";

    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("rigside");

    /** Each package and the packages of ours it may import; the root has the word {@code main}. */
    private static final Map<String, Set<String>> MAY_IMPORT =
            read(
                    """
                    main: command
                    command: guide desk archive bench screen runner report journal rig analysis session protocol \
                             measure decide yaml
                    desk: bench archive screen runner report journal rig analysis session protocol measure \
                          decide yaml
                    bench: screen runner journal rig analysis session protocol measure
                    archive: journal analysis session protocol measure decide
                    screen: analysis session protocol measure decide
                    runner: journal rig analysis session protocol measure yaml
                    report: analysis session protocol measure decide
                    journal: session protocol measure
                    rig: measure yaml
                    analysis: session protocol measure decide
                    session: protocol measure
                    guide: protocol rig measure yaml
                    protocol: measure yaml
                    measure:
                    decide:
                    yaml:
                    """);

    private static Map<String, Set<String>> read(String table) {
        Map<String, Set<String>> map = new TreeMap<>();
        for (String line : table.lines().toList()) {
            List<String> words = List.of(line.split("[: ]+", -1));
            map.put(
                    words.get(0),
                    words.stream()
                            .skip(1)
                            .filter(word -> !word.isEmpty())
                            .collect(Collectors.toSet()));
        }
        return map;
    }

    /** Each library, by the packages it consists of, and where it may be used. */
    private static final Map<List<String>, List<String>> FENCES =
            Map.of(
                    List.of("com.googlecode.lanterna.."), List.of("screen", "bench", "desk"),
                    List.of("picocli.."), List.of("command", "main"),
                    List.of("com.fasterxml.jackson.."), List.of("journal", "report", "guide"),
                    List.of("com.fasterxml.jackson.dataformat.csv.."), List.of("report"),
                    List.of("org.yaml.snakeyaml.."), List.of("yaml"),
                    List.of("javax.sound.."), List.of("rig"),
                    List.of("com.fazecast.."), List.of("rig"),
                    List.of("com.github.weisj..", "java.awt..", "javax.imageio..", "javax.swing.."),
                            List.of("report"),
                    List.of("org.apache.commons.math3.."),
                            List.of("decide", "analysis", "measure"));

    /** Where the same input always gives the same output. */
    private static final List<String> PURE =
            List.of("decide", "measure", "protocol", "session", "analysis");

    @Test
    void enoughClassesWereReadToMeanAnything() {
        assertTrue(
                CLASSES.size() >= FEWEST_CLASSES,
                () -> "only " + CLASSES.size() + " classes were imported");
    }

    @Test
    void everyPackageIsOnTheMap() {
        Set<String> found = new TreeSet<>();
        CLASSES.forEach(each -> found.add(word(each.getPackageName())));
        Set<String> unknown = new TreeSet<>(found);
        unknown.removeAll(MAY_IMPORT.keySet());
        assertEquals(Set.of(), unknown, "packages that are not on the map");
    }

    @Test
    void noPackageImportsWhatTheMapDoesNotAllow() {
        assertAll(
                MAY_IMPORT.entrySet().stream()
                        .map(
                                entry ->
                                        () ->
                                                classes()
                                                        .that()
                                                        .resideInAPackage(full(entry.getKey()))
                                                        .should()
                                                        .onlyDependOnClassesThat(
                                                                allowed(
                                                                        entry.getKey(),
                                                                        entry.getValue()))
                                                        .allowEmptyShould(true)
                                                        .check(CLASSES)));
    }

    private static DescribedPredicate<JavaClass> allowed(String own, Set<String> others) {
        return DescribedPredicate.describe(
                "the map allows",
                each -> {
                    String name = each.getPackageName();
                    boolean ours = name.equals("rigside") || name.startsWith("rigside.");
                    return !ours || word(name).equals(own) || others.contains(word(name));
                });
    }

    @Test
    void thereAreNoCycles() {
        slices().matching("rigside.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void librariesStayBehindTheirFences() {
        assertAll(
                FENCES.entrySet().stream()
                        .map(
                                fence ->
                                        () ->
                                                noClasses()
                                                        .that()
                                                        .resideOutsideOfPackages(
                                                                packages(fence.getValue()))
                                                        .should()
                                                        .dependOnClassesThat()
                                                        .resideInAnyPackage(
                                                                fence.getKey()
                                                                        .toArray(String[]::new))
                                                        .check(CLASSES)));
    }

    @Test
    void purePackagesReadNoFileClockOrChance() {
        noClasses()
                .that()
                .resideInAnyPackage(packages(PURE))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching(
                        "java\\.io\\.(File.*|RandomAccessFile|PrintStream)"
                                + "|java\\.util\\.concurrent\\.ThreadLocalRandom"
                                + "|java\\.security\\.SecureRandom|java\\.time\\.Clock")
                .orShould()
                .callMethodWhere(asksAClock())
                .orShould()
                .callConstructor(java.util.Random.class)
                .orShould()
                .callMethod(Math.class, "random")
                .check(CLASSES);
    }

    private static DescribedPredicate<JavaAccess<?>> asksAClock() {
        return DescribedPredicate.describe(
                "a clock is asked",
                access ->
                        (access.getTargetOwner().isEquivalentTo(System.class)
                                        && Set.of("nanoTime", "currentTimeMillis")
                                                .contains(access.getName()))
                                || (access.getTargetOwner().getPackageName().equals("java.time")
                                        && access.getName().equals("now")));
    }

    private static String[] packages(List<String> words) {
        return words.stream().map(ArchitectureTest::full).toArray(String[]::new);
    }

    private static String full(String word) {
        return word.equals(MAIN) ? "rigside" : "rigside." + word;
    }

    /** The part of a package's name that stands on the map. */
    private static String word(String name) {
        return name.equals("rigside")
                ? MAIN
                : Stream.of(name.split("\\.", -1)).skip(1).findFirst().orElse(MAIN);
    }
}
