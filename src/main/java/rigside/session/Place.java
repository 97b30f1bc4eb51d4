package rigside.session;

/**
 * A step of the procedure, as met in one session.
 *
 * @param stage the part of the session
 * @param donning the number of the donning, from 1; 0 outside donnings
 * @param step the step's position in its part, from 0; the facts of a session are step 0 of what
 *     comes before
 */
public record Place(Stage stage, int donning, int step) {
    public Place {
        if ((stage == Stage.DONNING) != (donning > 0) || step < 0) {
            throw new IllegalArgumentException("place " + stage + " " + donning + " " + step);
        }
    }
}
