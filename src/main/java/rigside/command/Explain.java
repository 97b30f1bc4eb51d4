package rigside.command;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigside.guide.Examples;
import rigside.guide.Page;
import rigside.guide.Pages;
import rigside.protocol.ProtocolElements;
import rigside.yaml.Element;
import rigside.yaml.Words;

/**
 * {@code rigside explain [WORD]}: what may stand in a protocol file or a rig file, a page an
 * element.
 */
@Command(
        name = "explain",
        description =
                "Explain what may stand in a protocol file or a rig file: the list of pages, the"
                        + " page of an element such as 'trials', or a key such as 'held-for'.")
final class Explain implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "WORD",
            description = "a page of the list, or a key of a protocol or rig file")
    private Optional<String> word = Optional.empty();

    @Option(names = "--all", description = "print all pages as one document")
    private boolean all;

    @Option(
            names = "--file",
            description = "print a whole file that shows the element, to start your own from")
    private boolean file;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(said());
        out.flush();
        return Exit.DONE;
    }

    private String said() {
        if (all) {
            return Pages.all().stream().map(Page::text).collect(Collectors.joining("\n\n"));
        }
        if (file) {
            return file(word.orElse(ProtocolElements.FILE.name()));
        }
        return word.map(this::page)
                .orElseGet(
                        () ->
                                "Pages about protocol files; 'rigside explain first-protocol' is"
                                        + " the one to begin with.\n\n"
                                        + Pages.list());
    }

    private String page(String name) {
        return Pages.named(name)
                .map(Page::text)
                .or(() -> Optional.of(Pages.ofKey(name)).filter(told -> !told.isEmpty()))
                .orElseThrow(() -> unknown("no page and no key is called ", name, Pages.words()));
    }

    private String file(String name) {
        return Pages.elements().stream()
                .filter(element -> element.name().equals(name))
                .findFirst()
                .map(Examples::file)
                .orElseThrow(
                        () ->
                                unknown(
                                        "no element is called ",
                                        name,
                                        Pages.elements().stream().map(Element::name).toList()));
    }

    private ParameterException unknown(String what, String name, Collection<String> known) {
        return new ParameterException(
                spec.commandLine(),
                what
                        + Words.quoted(name)
                        + "; "
                        + Words.nearest(name, known)
                                .map(near -> "did you mean '" + near + "'?")
                                .orElse("'rigside explain' lists the pages"));
    }
}
