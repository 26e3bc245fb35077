package stretchwright.ground;

/**
 * Something wrong with the input: where it stands, what is wrong, what would be right.
 *
 * @param file the file (or form) it was read from, as the user named it
 * @param key the key inside it, such as "wearer.measurements.hip girth"; empty for the file as a whole
 * @param problem one sentence: what is wrong, with the numbers
 * @param remedy one sentence: what would be right
 */
public record Finding(String file, String key, String problem, String remedy) {

    /** One line for people: file, key, what is wrong, what would be right. */
    public String line() {
        String where = key.isEmpty() ? file : file + ": " + key;
        return (where + ": " + problem + (remedy.isEmpty() ? "" : " " + remedy)).replaceAll("\\R", " ");
    }
}
