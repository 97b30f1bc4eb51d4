package rigside.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import rigside.session.Event;
import rigside.session.Look;
import rigside.session.Recorded;

/**
 * The written form of every kind of event; {@link EventReader} is the way back. The words here are
 * the file format: a change of any needs a new {@link #FORMAT} and a reader that still knows the
 * old one.
 *
 * @param line already holding number and time
 */
record EventWriter(Line line) implements Event.Cases<Line> {
    /**
     * The version of the written form; in the first line of every journal. From 2 on each line
     * carries the running hash ({@link RunningHash}), and entries may be amended.
     */
    static final int FORMAT = 2;

    /**
     * What a line carries when it was written together with the next one: without that one it does
     * not count.
     */
    static final String MORE = "more";

    /**
     * One line without its end and its hash.
     *
     * @param more whether it is written together with a line after it
     */
    static String write(Recorded recorded, boolean more) {
        ObjectNode node = Json.object();
        Line line = new Line(node);
        if (recorded.event() instanceof Event.SessionOpened) {
            line.put("journal", FORMAT);
        }
        line.put("n", recorded.number())
                .put("wall", DateTimeFormatter.ISO_ZONED_DATE_TIME.format(recorded.wall()))
                .put("at", recorded.at());
        if (more) {
            line.put(MORE, true);
        }
        recorded.event().match(new EventWriter(line));
        return Json.write(node);
    }

    private Line start(String word) {
        return line.put("event", word);
    }

    @Override
    public Line sessionOpened(Event.SessionOpened event) {
        Line opened =
                start("session-opened")
                        .put("program-version", event.programVersion())
                        .put("protocol-name", event.protocolName())
                        .put("protocol-text", event.protocolText())
                        .put("seed", event.seed())
                        .put("rig", event.rig())
                        .put("rig-text", event.rigText())
                        .put("simulated", event.simulated())
                        .put("speed", event.speed());
        if (!event.rigFolder().isEmpty()) {
            opened.put("rig-folder", event.rigFolder());
        }
        if (event.paper().isPresent()) {
            opened.put("from-paper", true);
            event.paper().get().on().ifPresent(day -> opened.put("form-date", day.toString()));
        }
        return opened;
    }

    @Override
    public Line sessionLeft(Event.SessionLeft event) {
        return start("session-left");
    }

    @Override
    public Line sessionReopened(Event.SessionReopened event) {
        return start("session-reopened").put("program-version", event.programVersion());
    }

    @Override
    public Line cautionsAcknowledged(Event.CautionsAcknowledged event) {
        return start("cautions-acknowledged");
    }

    @Override
    public Line donningStarted(Event.DonningStarted event) {
        return start("donning-started")
                .put("donning", event.donning())
                .put("round", event.round())
                .put("turn", event.turn())
                .put("condition", event.condition());
    }

    @Override
    public Line donningCompleted(Event.DonningCompleted event) {
        return start("donning-completed").put("donning", event.donning());
    }

    @Override
    public Line donningAbandoned(Event.DonningAbandoned event) {
        return start("donning-abandoned")
                .put("donning", event.donning())
                .put("reason", event.reason());
    }

    @Override
    public Line donningStruck(Event.DonningStruck event) {
        return start("donning-struck")
                .put("donning", event.donning())
                .put("reason", event.reason());
    }

    @Override
    public Line itemConfirmed(Event.ItemConfirmed event) {
        return start("item-confirmed").put(event.place()).put("item", event.item());
    }

    @Override
    public Line itemFailed(Event.ItemFailed event) {
        return start("item-failed").put(event.place()).put("item", event.item());
    }

    @Override
    public Line countdownStarted(Event.CountdownStarted event) {
        return start("countdown-started").put(event.place());
    }

    @Override
    public Line countdownFinished(Event.CountdownFinished event) {
        return start("countdown-finished").put(event.place());
    }

    @Override
    public Line exerciseStarted(Event.ExerciseStarted event) {
        return start("exercise-started").put(event.place()).put("exercise", event.exercise());
    }

    @Override
    public Line exerciseFinished(Event.ExerciseFinished event) {
        return start("exercise-finished").put(event.place()).put("exercise", event.exercise());
    }

    @Override
    public Line exerciseInterrupted(Event.ExerciseInterrupted event) {
        return start("exercise-interrupted").put(event.place()).put("exercise", event.exercise());
    }

    @Override
    public Line leadInStarted(Event.LeadInStarted event) {
        return start("lead-in-started").put(event.place()).put("trial", event.trial());
    }

    @Override
    public Line trialStarted(Event.TrialStarted event) {
        return start("trial-started").put(event.place()).put("trial", event.trial());
    }

    @Override
    public Line trialStopped(Event.TrialStopped event) {
        start("trial-stopped")
                .put(event.place())
                .put("trial", event.trial())
                .put("seconds", event.seconds());
        return event.traced() ? line.put("traced", true) : line;
    }

    @Override
    public Line traceMissing(Event.TraceMissing event) {
        return start("trace-missing")
                .put(event.place())
                .put("trial", event.trial())
                .put("why", event.why());
    }

    @Override
    public Line entryTraced(Event.EntryTraced event) {
        return TraceForm.write(start("entry-traced").put("entry", event.entry()), event.trace());
    }

    @Override
    public Line trialInterrupted(Event.TrialInterrupted event) {
        return start("trial-interrupted").put(event.place()).put("trial", event.trial());
    }

    @Override
    public Line voidOffered(Event.VoidOffered event) {
        return start("void-offered").put("entry", event.entry()).put("why", event.why());
    }

    @Override
    public Line voidDeclined(Event.VoidDeclined event) {
        return start("void-declined").put("entry", event.entry());
    }

    @Override
    public Line restFinished(Event.RestFinished event) {
        return start("rest-finished").put(event.place());
    }

    @Override
    public Line noteRead(Event.NoteRead event) {
        return start("note-read").put(event.place());
    }

    @Override
    public Line gateStarted(Event.GateStarted event) {
        return start("gate-started").put(event.place()).put("gate", event.gate());
    }

    @Override
    public Line gateFinished(Event.GateFinished event) {
        return start("gate-finished").put(event.place()).put("gate", event.gate());
    }

    @Override
    public Line gateInterrupted(Event.GateInterrupted event) {
        return start("gate-interrupted").put(event.place()).put("gate", event.gate());
    }

    @Override
    public Line gateReopened(Event.GateReopened event) {
        return start("gate-reopened").put(event.place()).put("gate", event.gate());
    }

    @Override
    public Line entryDoubted(Event.EntryDoubted event) {
        return start("entry-doubted").put(event.slot()).put(event.value()).put("why", event.why());
    }

    @Override
    public Line doubtDropped(Event.DoubtDropped event) {
        return start("doubt-dropped").put(event.slot());
    }

    @Override
    public Line entryCaptured(Event.EntryCaptured event) {
        Line captured =
                start("entry-captured")
                        .put("entry", event.entry())
                        .put(event.slot())
                        .put(event.value())
                        .put("source", Words.of(event.source()));
        return event.seconds() > 0 ? captured.put("seconds", event.seconds()) : captured;
    }

    @Override
    public Line entryVoided(Event.EntryVoided event) {
        return start("entry-voided").put("entry", event.entry()).put("reason", event.reason());
    }

    @Override
    public Line entryAmended(Event.EntryAmended event) {
        return start("entry-amended")
                .put("entry", event.entry())
                .put(event.value())
                .put("reason", event.reason());
    }

    @Override
    public Line amendmentWithdrawn(Event.AmendmentWithdrawn event) {
        return start("amendment-withdrawn").put("entry", event.entry());
    }

    @Override
    public Line slotLeftOut(Event.SlotLeftOut event) {
        return start("slot-left-out").put(event.slot()).put("reason", event.reason());
    }

    @Override
    public Line leaveOutWithdrawn(Event.LeaveOutWithdrawn event) {
        return start("leave-out-withdrawn").put(event.slot());
    }

    @Override
    public Line itemLeftOut(Event.ItemLeftOut event) {
        return start("item-left-out")
                .put(event.place())
                .put("item", event.item())
                .put("reason", event.reason());
    }

    @Override
    public Line itemReopened(Event.ItemReopened event) {
        return start("item-reopened").put(event.place()).put("item", event.item());
    }

    @Override
    public Line exerciseLeftOut(Event.ExerciseLeftOut event) {
        return start("exercise-left-out")
                .put(event.place())
                .put("exercise", event.exercise())
                .put("reason", event.reason());
    }

    @Override
    public Line exerciseReopened(Event.ExerciseReopened event) {
        return start("exercise-reopened").put(event.place()).put("exercise", event.exercise());
    }

    @Override
    public Line noteWritten(Event.NoteWritten event) {
        return start("note-written").put("text", event.text());
    }

    @Override
    public Line timeDoubted(Event.TimeDoubted event) {
        Line line = start("time-doubted").put("why", event.why());
        return event.ended() ? line.put("ended", true) : line;
    }

    @Override
    public Line feedFailed(Event.FeedFailed event) {
        return start("feed-failed").put("feed", event.feed()).put("why", event.why());
    }

    @Override
    public Line feedBack(Event.FeedBack event) {
        return start("feed-back").put("feed", event.feed()).put("words", event.words());
    }

    @Override
    public Line selfTested(Event.SelfTested event) {
        return start("self-tested")
                .put("when", event.when())
                .put("terminal", event.terminal())
                .put("answers", event.answers())
                .put("median", event.median())
                .put("p99", event.p99())
                .put("most", event.most())
                .put("signal", event.signal())
                .put(
                        "reaction-microseconds",
                        event.reactions().stream()
                                .map(seconds -> Math.toIntExact(Math.round(seconds * 1e6)))
                                .toList())
                .put("heard", String.join(" ", event.heard()))
                .put("unheard", String.join(" ", event.unheard()));
    }

    @Override
    public Line cued(Event.Cued event) {
        return start("cued").put("cue", event.cue()).put("how", event.how());
    }

    @Override
    public Line halted(Event.Halted event) {
        return start("halted").put("why", event.why());
    }

    @Override
    public Line continued(Event.Continued event) {
        return start("continued");
    }

    @Override
    public Line lookTaken(Event.LookTaken event) {
        Look look = event.look();
        return start("look-taken")
                .put("round", look.round())
                .put("enough", look.enough())
                .put("plan-used-up", look.planUsedUp())
                .put("lines", look.lines(), EventWriter::lookLine);
    }

    private static void lookLine(Line line, Look.Line compared) {
        line.put("measure", compared.measure())
                .put("condition", compared.condition())
                .put("n", compared.n())
                .put("entries", compared.entries())
                .put("estimate", compared.estimate())
                .put("low", compared.low())
                .put("high", compared.high())
                .put("critical", compared.critical())
                .put("verdict", compared.verdict())
                .put("settled", compared.settled());
    }

    @Override
    public Line wentOn(Event.WentOn event) {
        return start("went-on");
    }

    @Override
    public Line repeatsEnded(Event.RepeatsEnded event) {
        return start("repeats-ended").put("reason", event.reason());
    }

    @Override
    public Line sessionClosed(Event.SessionClosed event) {
        return start("session-closed");
    }
}
