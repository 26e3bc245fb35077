package stretchwright.ground;

/**
 * Something wrong with the input: where it stands, what is wrong, what would be right.
 *
 * @param file the file (or form) it was read from, as the user named it
 * @param key the key inside it, such as "wearer.measurements.hip girth"; empty for the file as a whole
 * @param row line of the file, from 1; 0 where it is not known
 * @param wrong what is wrong, with the numbers
 * @param right what would be right
 * @param unit of the file, in which it is told
 */
public record Finding(String file, String key, int row, Said wrong, Said right, Unit unit) {

    /** The same, told in another unit. */
    public Finding in(Unit other) {
        return new Finding(file, key, row, wrong, right, other);
    }

    /** What is wrong, in words. */
    public String problem() {
        return Voice.of(unit).say(wrong);
    }

    /** What would be right, in words. */
    public String remedy() {
        return Voice.of(unit).say(right);
    }

    /** Both, beside the place it is about. */
    public String told(Voice voice) {
        return voice.say(wrong.and(right)).strip();
    }

    /** One line for people: file, key, what is wrong, what would be right. */
    public String line() {
        String where = key.isEmpty() ? file : file + ": " + key;
        String at = row == 0 ? "" : Voice.of(unit).say(Said.of("ground", "finding.row", Part.count(row))) + " ";
        String remedy = remedy();
        return (where + ": " + at + problem() + (remedy.isEmpty() ? "" : " " + remedy)).replaceAll("\\R", " ");
    }
}
