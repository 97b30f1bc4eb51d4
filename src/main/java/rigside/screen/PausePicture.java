package rigside.screen;

import java.util.List;
import rigside.protocol.Condition;
import rigside.protocol.Protocol;
import rigside.session.Activity;
import rigside.session.Donning;
import rigside.session.Schedule;

/** Between donnings, at the end, and when everything stands still. */
record PausePicture(Scene scene) {

    List<Line> nextDonning(Activity.NextDonning next) {
        Condition condition = scene.state().protocol().condition(next.condition()).orElseThrow();
        int worn =
                condition.specimen().wornBefore()
                        + (int)
                                scene.state().course().donnings().stream()
                                        .filter(each -> each.condition().equals(next.condition()))
                                        .count();
        return Scene.stack(
                List.of(
                        Line.of(staysOn(next) ? "Next setting" : "Next to put on")
                                .plus(Tone.QUIET, isOfOne() ? "" : turn(next))),
                scene.big(condition.title()),
                Wrap.hanging(
                        Line.of("specimen: "),
                        Tone.STRONG,
                        condition.specimen().piece() + ", put on before: " + Texts.times(worn),
                        scene.columns()),
                toBegin(next),
                LastResults.of(scene));
    }

    private static String turn(Activity.NextDonning next) {
        return ", turn " + next.turn() + " of round " + next.round();
    }

    private List<Line> toBegin(Activity.NextDonning next) {
        if (scene.state().isFromPaper()) {
            return scene.strong("[Enter] when its part of the form is in front of you.");
        }
        return staysOn(next)
                ? Line.stacked(
                        scene.strong("[Enter] The mask stays on."),
                        scene.wrapped(
                                "If it came off or moved: [Enter] all the same, then [a] abandons"
                                        + " this setting, and it is done again from putting the mask"
                                        + " on."))
                : scene.strong("[Enter] when you are about to put it on.");
    }

    private boolean staysOn(Activity.NextDonning next) {
        return !Schedule.isPutOn(scene.state(), next);
    }

    private boolean isOfOne() {
        return scene.state().protocol().purpose() == Protocol.Purpose.REPEATABILITY;
    }

    List<Line> donningDone(Activity.DonningDone activity) {
        String number = "donning " + activity.donning();
        boolean isTyped = scene.state().isFromPaper();
        boolean staysOn =
                scene.state()
                        .course()
                        .donning(activity.donning())
                        .filter(donning -> Schedule.isLeftOn(scene.state(), donning))
                        .isPresent();
        return Scene.stack(
                scene.big("Done"),
                scene.strong(
                        "[Enter] completes "
                                + number
                                + (isTyped
                                        ? "."
                                        : staysOn
                                                ? "; leave the mask on: another setting follows."
                                                : "; then take the mask off.")),
                scene.wrapped(
                        "Until then the last entry can be undone."
                                + (isTyped || staysOn
                                        ? ""
                                        : " Nothing more is asked while the mask is on.")),
                LastResults.of(scene));
    }

    List<Line> recommended(Activity.Recommended activity) {
        boolean enough = scene.view().shown().enough();
        List<Line> above =
                Scene.stack(
                        scene.size() > 0
                                ? scene.big(
                                        isOfOne() ? "All done" : enough ? "Enough" : "Plan used up")
                                : List.of(),
                        scene.strong(scene.view().shown().next() + "."));
        return Scene.stack(
                above,
                verdicts(above),
                scene.wrapped(
                        activity.mayGoOn()
                                ? "[Enter] ends the donnings. After this no donning can follow."
                                        + " [m] does more rounds all the same; the verdict reached"
                                        + " stays."
                                : "[Enter] ends the donnings. After this no donning can follow."));
    }

    List<Line> halted(Activity.Halted activity) {
        boolean worn = scene.state().course().open().isPresent();
        List<Line> why = scene.strong(Texts.sentence(activity.why()) + ".");
        return worn
                ? Scene.stack(
                        scene.big("Stopped"),
                        Line.stacked(
                                why,
                                scene.strong(
                                        "Unwell? Mask off, sit down, breathe room air. Nothing is"
                                                + " lost.")),
                        scene.wrapped(
                                "[Enter] the mask stayed on and you feel well: go on where it"
                                        + " stood. A trial or exercise that was broken off begins"
                                        + " afresh."),
                        scene.wrapped(
                                "[a] the mask came off or moved: this donning is abandoned, say"
                                        + " why, and it is done again in its turn."))
                : Scene.stack(
                        scene.big("Stopped"),
                        why,
                        scene.wrapped("Take your time, nothing is lost. [Enter] goes on."));
    }

    List<Line> closing() {
        List<Line> above =
                Scene.stack(
                        Line.stacked(
                                scene.strong("Everything is done. [Enter] closes the session."),
                                scene.wrapped(
                                        "Once closed, nothing is entered any more, only amended or"
                                                + " struck out.")),
                        outcome());
        return Scene.stack(above, verdicts(above));
    }

    List<Line> closed() {
        List<Line> above = Line.stacked(scene.strong("This session is closed."), outcome());
        return Scene.stack(above, verdicts(above));
    }

    /** How far it came, and how the repeats ended if nothing settled. */
    private List<Line> outcome() {
        if (scene.state().protocol().purpose() == Protocol.Purpose.INSTRUMENT_CHECK) {
            return scene.strong(scene.view().shown().next() + ".");
        }
        List<Line> counts = counts();
        return scene.state().course().ended().isPresent() && !scene.view().shown().enough()
                ? Line.stacked(scene.strong(scene.view().shown().next() + "."), counts)
                : counts;
    }

    private List<Line> counts() {
        long complete =
                scene.state().course().donnings().stream()
                        .filter(each -> each.outcome() == Donning.Outcome.COMPLETE)
                        .count();
        return scene.wrapped(
                (isOfOne()
                                ? ""
                                : Texts.count(
                                                scene.view().shown().completeRounds(),
                                                "complete round")
                                        + ", ")
                        + Texts.count((int) complete, "complete donning")
                        + ", "
                        + (scene.state().course().donnings().size() - complete)
                        + " abandoned or struck out.");
    }

    /** What was found, or that it is concealed; before one has to scroll, if it can be. */
    private List<Line> verdicts(List<Line> above) {
        if (scene.tallyBeside() || scene.view().shown().measures().isEmpty()) {
            return List.of();
        }
        List<Line> beside =
                scene.view().shown().result()
                        ? Line.stacked(VerdictList.beside(scene), VerdictList.concealed(scene))
                        : List.of();
        int rows = scene.rows() - 2 - above.size() - beside.size();
        return Line.stacked(VerdictList.of(scene, rows), beside);
    }
}
