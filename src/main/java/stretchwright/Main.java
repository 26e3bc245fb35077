package stretchwright;

/** The program's entry: hands the arguments to the command door. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println("stretchwright");
    }
}
