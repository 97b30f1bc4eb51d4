package rigside;

/** The program's entry: hands the arguments over and returns the exit code. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println("rigside");
    }
}
