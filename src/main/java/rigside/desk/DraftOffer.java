package rigside.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rigside.archive.SpreadOnRecord;
import rigside.archive.SpreadOnRecordWords;
import rigside.archive.SpreadsForPlan;
import rigside.archive.WithValues;
import rigside.protocol.Measure;
import rigside.protocol.Protocol;

/**
 * What the sessions on record have to say to a question.
 *
 * @param words to be read before all else that is said to it; one paragraph each, may be empty
 * @param answers that they offer, the nearest first; may be empty
 */
record DraftOffer(List<String> words, List<String> answers) {
    static final DraftOffer NONE = new DraftOffer(List.of(), List.of());

    /** The id of the question whose sessions count, asked where there are several wearers. */
    static final String WEARER = "wearer";

    private static final String SPREAD = "-spread";

    DraftOffer {
        words = List.copyOf(words);
        answers = List.copyOf(answers);
    }

    /** Whose sessions count. */
    static DraftQuestion wearer(DraftRecord record) {
        return DraftQuestion.open(
                WEARER,
                "Who will wear the mask? The wearer's code.",
                "Your sessions on record tell how far values spread, of each wearer apart; they"
                        + " are of "
                        + String.join(", ", record.wearers())
                        + ". Leave it empty for somebody else: then they say nothing.");
    }

    static boolean isForSpread(DraftQuestion question) {
        return question.id().endsWith(SPREAD);
    }

    /**
     * What they have to say to one question.
     *
     * @param record empty while they are read
     * @param protocol what the answers so far come to
     */
    static DraftOffer of(
            DraftQuestion question,
            DraftAnswers given,
            Optional<DraftRecord> record,
            Protocol protocol) {
        if (record.isEmpty()) {
            return saying("Your sessions on record are still being read.");
        }
        DraftRecord read = record.get();
        if (read.trouble().isPresent()) {
            return saying("Your sessions on record say nothing: " + read.trouble().get());
        }
        List<String> wearers = read.wearers();
        if (wearers.size() > 1 && !given.has(WEARER)) {
            return saying(
                    "Your sessions on record are of several wearers; 'rigside spread --wearer CODE'"
                            + " tells of one.");
        }
        String code = given.has(WEARER) ? given.of(WEARER) : String.join("", wearers);
        // Where no session names a wearer, all are taken to be of the one who drafts.
        List<WithValues> sessions =
                wearers.isEmpty() ? read.sessions() : code.isEmpty() ? List.of() : read.of(code);
        if (sessions.isEmpty()) {
            return NONE;
        }
        String id = question.id().substring(0, question.id().length() - SPREAD.length());
        Measure measure = protocol.measure(id).orElseThrow();
        return SpreadsForPlan.of(protocol, measure, sessions)
                .map(
                        spread ->
                                of(
                                        spread,
                                        protocol,
                                        wearers.size() > 1
                                                ? "Sessions of " + code
                                                : "Your own sessions"))
                .orElseGet(() -> saying("Your sessions on record do not tell it yet."));
    }

    private static DraftOffer of(SpreadOnRecord spread, Protocol protocol, String whose) {
        SpreadOnRecord.Found found = spread.planned(protocol.plan().design()).orElseThrow();
        List<String> words = new ArrayList<>();
        words.add(
                whose
                        + ": "
                        + SpreadOnRecordWords.planned(spread, protocol.plan().design())
                                .orElseThrow()
                        + ".");
        SpreadOnRecordWords.unlike(found).ifPresent(words::add);
        words.addAll(spread.remarks());
        return new DraftOffer(
                words,
                Stream.of(found.spread(), found.upper())
                        .map(spread.scale()::spread)
                        .distinct()
                        .toList());
    }

    private static DraftOffer saying(String words) {
        return new DraftOffer(List.of(words), List.of());
    }

    /** The question with what they say to it. */
    DraftQuestion beside(DraftQuestion question) {
        return question.with(Stream.concat(words.stream(), question.why().stream()).toList());
    }

    /**
     * The answer so many further down than what is typed; above the first there is none typed, and
     * above one's own words nothing.
     */
    String next(String typed, int by) {
        int at = answers.indexOf(typed);
        if (at < 0 && by < 0) {
            return typed;
        }
        int to = at + by;
        return to < 0 ? "" : answers.get(Math.min(to, answers.size() - 1));
    }
}
