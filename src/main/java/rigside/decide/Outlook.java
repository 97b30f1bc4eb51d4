package rigside.decide;

/**
 * What a plan brings when the true difference is this; all but the rounds are shares of campaigns.
 *
 * @param truth the true difference, on the analysis scale
 * @param meaningful settled on a meaningful difference
 * @param noMeaningful settled on no meaningful difference
 * @param unsettled not settled when the plan was used up
 * @param wrong settled on what is not so: a meaningful change in a direction in which the truth is
 *     not beyond the band, or none where it is beyond; nothing shows it, the tests hold the
 *     promised error by it
 * @param meanRounds rounds (values per condition) used, on average; all of them when unsettled
 * @param ninetiethRounds rounds that nine of ten campaigns do not exceed
 * @param coverage all intervals up to the last look hold the truth, had testing gone on to it
 */
public record Outlook(
        double truth,
        double meaningful,
        double noMeaningful,
        double unsettled,
        double wrong,
        double meanRounds,
        int ninetiethRounds,
        double coverage) {}
